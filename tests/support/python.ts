import { spawnSync } from 'node:child_process';

/** Debian's Python, for which python3-openpyxl is packaged: it reads files with a program that is none of ours. */
export const PYTHON = '/usr/bin/python3';
export const hasOpenpyxl = spawnSync(PYTHON, ['-c', 'import openpyxl']).status === 0;

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as HTML shows it, also inside an attribute. */
export const escapeHtml = (text: string): string => text.replace(/[&<>"']/g, (one) => ESCAPES[one] ?? one);

/**
 * A report as one page for a browser, to read on a phone and to print: HTML with its style and its charts in it, which
 * asks for nothing else and runs no script. Charts are SVG whose words stand beside them as text of the page, so that
 * these stay as large as all other words however narrow the page is; what they show is never told by colour alone.
 */
package org.duskloom.engine.report.page;

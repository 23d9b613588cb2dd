/** Sheets and jobs as PDF. */
package org.frisket.export.pdf;

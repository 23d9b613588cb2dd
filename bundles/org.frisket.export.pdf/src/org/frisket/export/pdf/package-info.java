/**
 * Sheets and jobs as PDF 1.7 in their true size. What a machine does stands apart from what is printed: in optional content
 * groups (ISO 32000-1, 8.11) that say what they are by the metadata of ISO 19593-1, each in a separation colour of its own
 * that overprints. {@link org.frisket.export.pdf.PageContent} paints, {@link org.frisket.export.pdf.PdfFile} holds the
 * document.
 */
package org.frisket.export.pdf;

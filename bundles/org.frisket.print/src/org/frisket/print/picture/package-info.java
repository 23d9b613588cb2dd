/**
 * Pictures as they come: how large, how they are turned, how fine. {@link org.frisket.print.picture.PictureFile} tells all
 * that from the head of a file and decodes it on demand: PNG, JPEG, GIF, BMP and TIFF by the readers of Java, WebP by one of
 * TwelveMonkeys. SVG and pages of PDF are drawn in the size that is wanted.
 */
package org.frisket.print.picture;

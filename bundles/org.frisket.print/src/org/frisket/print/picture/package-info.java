/**
 * Pictures as they come: how large, how they are turned, how fine. {@link org.frisket.print.picture.PictureFile} tells all
 * that from the head of a file and decodes it on demand; PNG, JPEG, GIF, BMP and TIFF by the readers of Java.
 */
package org.frisket.print.picture;

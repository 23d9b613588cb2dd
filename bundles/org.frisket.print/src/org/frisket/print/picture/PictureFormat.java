package org.frisket.print.picture;

/** Kinds of files that are read. */
public enum PictureFormat {
	PNG, JPEG, GIF, BMP, TIFF
}

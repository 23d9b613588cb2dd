package org.frisket.prepare.layout;

/** Sizes of office paper, upright, in mm: A4 of ISO 216, and Letter, which is 8.5 by 11 inches. */
public enum Paper {

	A4(210, 297), LETTER(215.9, 279.4);

	private final double width;
	private final double height;

	Paper(double width, double height) {
		this.width = width;
		this.height = height;
	}

	public double width() {
		return width;
	}

	public double height() {
		return height;
	}
}

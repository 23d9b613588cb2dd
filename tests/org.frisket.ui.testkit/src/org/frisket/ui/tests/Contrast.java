package org.frisket.ui.tests;

import org.eclipse.swt.graphics.RGB;

/** How well one colour stands out from another: relative luminance and contrast ratio of WCAG 2.1. */
final class Contrast {

	private Contrast() {
	}

	/** (L1 + 0.05) / (L2 + 0.05), L1 being the lighter; from 1 to 21. */
	static double ratio(RGB a, RGB b) {
		double la = luminance(a);
		double lb = luminance(b);
		return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
	}

	/** 0.2126 R + 0.7152 G + 0.0722 B of the linear channels of sRGB; from 0 to 1. */
	static double luminance(RGB rgb) {
		return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
	}

	private static double linear(int channel) {
		double c = channel / 255.0;
		return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
	}

	/** What is seen of a colour that is laid on another, opaque from 0 to 1. */
	static RGB over(RGB ground, RGB laid, double opacity) {
		return new RGB(mix(ground.red, laid.red, opacity), mix(ground.green, laid.green, opacity),
				mix(ground.blue, laid.blue, opacity));
	}

	private static int mix(int ground, int laid, double opacity) {
		return (int) Math.round(ground + (laid - ground) * opacity);
	}
}

package org.frisket.print.contour;

/**
 * Colours as people see their differences: CIE 1976 L*a*b* (ISO/CIE 11664-4) of sRGB values (IEC 61966-2-1), for the white
 * D65. Differences are plain distances in it (CIE 1976 ΔE*ab): 1 is hardly seen, 100 is black to white.
 *
 * @param l lightness, from 0 to 100
 * @param a towards red, or green if negative
 * @param b towards yellow, or blue if negative
 */
record Lab(double l, double a, double b) {

	private static final double[] LINEAR = new double[256];
	/** The cube root, or what stands for it near black, of 0 to 1. */
	private static final double[] ROOT = new double[4097];
	private static final double WHITE_X = 0.95047;
	private static final double WHITE_Z = 1.08883;

	static {
		for (int i = 0; i < LINEAR.length; i++) {
			double value = i / 255.0;
			LINEAR[i] = value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
		}
		for (int i = 0; i < ROOT.length; i++) {
			ROOT[i] = exactRoot(i / (ROOT.length - 1.0));
		}
	}

	private static double exactRoot(double t) {
		double edge = 6.0 / 29;
		return t > edge * edge * edge ? Math.cbrt(t) : t / (3 * edge * edge) + 4.0 / 29;
	}

	/** Straight between the entries of a table; near black, where the root is steep, without it. */
	private static double root(double t) {
		if (t < 0.02) {
			return exactRoot(t);
		}
		double at = Math.min(1, t) * (ROOT.length - 1);
		int index = Math.min(ROOT.length - 2, (int) at);
		return ROOT[index] + (ROOT[index + 1] - ROOT[index]) * (at - index);
	}

	/** @param rgb {@code 0xRRGGBB}; what stands above is not looked at */
	static Lab of(int rgb) {
		double red = LINEAR[rgb >> 16 & 0xff];
		double green = LINEAR[rgb >> 8 & 0xff];
		double blue = LINEAR[rgb & 0xff];
		double x = root((0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / WHITE_X);
		double y = root(0.2126729 * red + 0.7151522 * green + 0.0721750 * blue);
		double z = root((0.0193339 * red + 0.1191920 * green + 0.9503041 * blue) / WHITE_Z);
		return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
	}

	double distance(Lab other) {
		return length(l - other.l, a - other.a, b - other.b);
	}

	/**
	 * The same, but a shadow that falls on the other colour is no difference as long as it takes no more than {@code
	 * shadow} of lightness. In a shadow the light of all wavelengths is less by one factor, which brings L* + 16, a* and b*
	 * nearer to zero by one factor too (its cube root).
	 */
	double distanceInShadow(Lab other, double shadow) {
		double darker = other.l - l;
		if (shadow <= 0 || darker <= 0) {
			return distance(other);
		}
		double factor = (Math.max(l, other.l - shadow) + 16) / (other.l + 16);
		return length(Math.max(0, darker - shadow), a - other.a * factor, b - other.b * factor);
	}

	private static double length(double x, double y, double z) {
		return Math.sqrt(x * x + y * y + z * z);
	}
}

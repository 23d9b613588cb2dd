package org.frisket.model;

import org.frisket.model.internal.NumberText;

/**
 * An affine map {@code (x, y) -> (a x + c y + e, b x + d y + f)} as a value of the model, in the order of SVG's
 * {@code matrix(a b c d e f)}. A negative zero becomes a plain one, so that equal maps have one text.
 */
public record Matrix(double a, double b, double c, double d, double e, double f) {

	public static final Matrix IDENTITY = new Matrix(1, 0, 0, 1, 0, 0);

	/** @throws IllegalArgumentException if a number is infinite or not a number */
	public Matrix {
		a = plain(a);
		b = plain(b);
		c = plain(c);
		d = plain(d);
		e = plain(e);
		f = plain(f);
	}

	private static double plain(double value) {
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException("a matrix of " + value);
		}
		return value + 0.0;
	}

	/** A shift by {@code (dx, dy)} in mm. */
	public static Matrix translation(double dx, double dy) {
		return new Matrix(1, 0, 0, 1, dx, dy);
	}

	/** This map first, then {@code next}. */
	public Matrix then(Matrix next) {
		return new Matrix(next.a * a + next.c * b, next.b * a + next.d * b, next.a * c + next.c * d,
				next.b * c + next.d * d, next.a * e + next.c * f + next.e, next.b * e + next.d * f + next.f);
	}

	/**
	 * Reads what {@link #toString()} writes: six numbers parted by blanks.
	 *
	 * @throws IllegalArgumentException if they are not six, or not numbers
	 */
	public static Matrix parse(String text) {
		String[] parts = text.strip().split("\\s+");
		if (parts.length != 6) {
			throw new IllegalArgumentException("not six numbers: '" + text + "'");
		}
		double[] n = new double[6];
		for (int i = 0; i < 6; i++) {
			n[i] = NumberText.parse(parts[i]);
		}
		return new Matrix(n[0], n[1], n[2], n[3], n[4], n[5]);
	}

	/** The six numbers parted by blanks, each as briefly as its exact value allows. */
	@Override
	public String toString() {
		return NumberText.write(a) + ' ' + NumberText.write(b) + ' ' + NumberText.write(c) + ' ' + NumberText.write(d)
				+ ' ' + NumberText.write(e) + ' ' + NumberText.write(f);
	}
}

package org.frisket.page;

import java.util.List;

import org.frisket.model.OperationKind;

/**
 * What a line is drawn with: first its pattern, then its hue.
 *
 * @param colour  as {@code #rrggbb}
 * @param width   in mm
 * @param pattern lengths of dashes and gaps in mm; empty for an unbroken line
 */
public record Ink(String colour, double width, List<Double> pattern) {

	private static final int HEX = 16;

	public Ink {
		pattern = List.copyOf(pattern);
		if (!colour.matches("#[0-9a-fA-F]{6}") || !(width > 0)) {
			throw new IllegalArgumentException("a line of " + width + " mm in " + colour);
		}
	}

	/**
	 * Of an operation, wherever people look at it; the hues stay apart for colour-blind eyes and have 4.5:1 on white.
	 */
	public static Ink of(OperationKind kind) {
		return switch (kind) {
		case CUT -> new Ink("#0b5f62", 0.2, List.of());
		case KISS_CUT -> new Ink("#6b3fa0", 0.2, List.of(4.0, 1.0, 1.0, 1.0));
		case CREASE -> new Ink("#8a5a00", 0.2, List.of(4.0, 2.0));
		case PERFORATE -> new Ink("#b0176b", 0.3, List.of(0.3, 1.2));
		case DRAW -> new Ink("#2f6f1e", 0.1, List.of());
		case PRINT -> new Ink("#666666", 0.1, List.of());
		};
	}

	/** Red, green and blue from 0 to 1. */
	public float[] rgb() {
		return rgb(colour);
	}

	/**
	 * Red, green and blue from 0 to 1.
	 *
	 * @param colour as {@code #rrggbb}
	 */
	public static float[] rgb(String colour) {
		float[] parts = new float[3];
		for (int i = 0; i < parts.length; i++) {
			parts[i] = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), HEX) / 255f;
		}
		return parts;
	}

	/** The pattern as graphics take it. */
	float[] dashes() {
		float[] dashes = new float[pattern.size()];
		for (int i = 0; i < dashes.length; i++) {
			dashes[i] = pattern.get(i).floatValue();
		}
		return dashes;
	}
}

package org.frisket.export;

import java.util.List;

import org.frisket.model.OperationKind;

/**
 * How an operation is drawn in files that people look at: its hue and, first, its line pattern.
 *
 * @param colour  as {@code #rrggbb}; the hues stay apart for colour-blind eyes and have 4.5:1 on white
 * @param width   of the line in mm
 * @param pattern lengths of dashes and gaps in mm; empty for an unbroken line
 */
public record OperationInk(String colour, double width, List<Double> pattern) {

	public OperationInk {
		pattern = List.copyOf(pattern);
	}

	public static OperationInk of(OperationKind kind) {
		return switch (kind) {
		case CUT -> new OperationInk("#0b5f62", 0.2, List.of());
		case KISS_CUT -> new OperationInk("#6b3fa0", 0.2, List.of(4.0, 1.0, 1.0, 1.0));
		case CREASE -> new OperationInk("#8a5a00", 0.2, List.of(4.0, 2.0));
		case PERFORATE -> new OperationInk("#b0176b", 0.3, List.of(0.3, 1.2));
		case DRAW -> new OperationInk("#2f6f1e", 0.1, List.of());
		case PRINT -> new OperationInk("#666666", 0.1, List.of());
		};
	}

	/** The word for the operation in files for machines, such as {@code kiss-cut}. */
	public static String word(OperationKind kind) {
		return switch (kind) {
		case CUT -> "cut";
		case KISS_CUT -> "kiss-cut";
		case CREASE -> "crease";
		case PERFORATE -> "perforate";
		case DRAW -> "draw";
		case PRINT -> "print";
		};
	}
}

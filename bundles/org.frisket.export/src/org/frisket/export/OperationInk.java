package org.frisket.export;

import java.util.List;

import org.frisket.model.OperationKind;
import org.frisket.page.Ink;

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
		Ink ink = Ink.of(kind);
		return new OperationInk(ink.colour(), ink.width(), ink.pattern());
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

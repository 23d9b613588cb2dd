package org.frisket.export.dxf;

import java.io.IOException;
import java.io.Writer;

import org.frisket.export.machine.Digits;

/** Pairs of lines: a code, and its value. */
final class Groups {

	private final Writer out;
	private final int decimals;

	/** @param decimals of lengths */
	Groups(Writer out, int decimals) {
		this.out = out;
		this.decimals = decimals;
	}

	Groups put(int code, String value) throws IOException {
		out.append(code < 10 ? "  " : code < 100 ? " " : "").append(Integer.toString(code)).append('\n').append(value)
				.write('\n');
		return this;
	}

	Groups put(int code, int value) throws IOException {
		return put(code, Integer.toString(value));
	}

	/** In the drawing's unit. */
	Groups put(int code, double length) throws IOException {
		return put(code, length(length));
	}

	/** A length as it stands in the file. */
	String length(double length) {
		return Digits.of(length, decimals);
	}

	/** The group 10 or another of its kind, and its y. */
	Groups place(int code, double x, double y) throws IOException {
		return put(code, x).put(code + 10, y);
	}
}

package org.frisket.export.gcode;

import java.io.IOException;
import java.io.Writer;

import org.frisket.export.machine.Ascii;

/** Lines of a program, which a controller calls blocks. */
final class Blocks {

	/** The longest line RS274/NGC allows. */
	private static final int LONGEST = 256;
	/** Line numbers have five digits and may be used again. */
	private static final int NUMBERS = 100_000;

	private final Writer out;
	private final int step;
	private int number;

	/** @param step from one line number to the next, 0 for none */
	Blocks(Writer out, int step) {
		this.out = out;
		this.step = step;
	}

	void put(CharSequence words) throws IOException {
		if (step > 0) {
			number = (number + step) % NUMBERS;
			out.append('N').append(Integer.toString(number)).write(' ');
		}
		out.append(words).write('\n');
	}

	/** Parentheses within would end it. */
	void comment(String text) throws IOException {
		String plain = Ascii.of(text).replace('(', '[').replace(')', ']');
		put("(" + plain.substring(0, Math.min(LONGEST - 16, plain.length())) + ")");
	}

	/** Which stands alone, without a number. */
	void percent() throws IOException {
		out.write("%\n");
	}
}

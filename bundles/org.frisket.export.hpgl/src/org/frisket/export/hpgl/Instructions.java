package org.frisket.export.hpgl;

import java.io.IOException;
import java.io.Writer;

/** Instructions in lines that a small memory holds. Lines end between instructions alone. */
final class Instructions {

	private final Writer out;
	private final int longestLine;
	private final int mostPlaces;
	private int lineLength;
	/** One that may get more places; empty if none. */
	private final StringBuilder open = new StringBuilder();
	private int places;

	Instructions(Writer out, int longestLine, int mostPlaces) {
		this.out = out;
		this.longestLine = longestLine;
		this.mostPlaces = mostPlaces;
	}

	void put(String instruction) throws IOException {
		close();
		write(instruction);
	}

	/** A place for PD, in the same instruction as the one before if it has room. */
	void draw(long x, long y) throws IOException {
		String place = x + "," + y;
		if (places == mostPlaces || !open.isEmpty() && open.length() + place.length() + 2 > longestLine) {
			close();
		}
		open.append(open.isEmpty() ? "PD" : ",").append(place);
		places++;
	}

	private void close() throws IOException {
		if (!open.isEmpty()) {
			write(open);
			open.setLength(0);
			places = 0;
		}
	}

	private void write(CharSequence instruction) throws IOException {
		if (lineLength > 0 && lineLength + instruction.length() + 1 > longestLine) {
			out.write('\n');
			lineLength = 0;
		}
		out.append(instruction).write(';');
		lineLength += instruction.length() + 1;
	}

	void end() throws IOException {
		close();
		out.write('\n');
	}
}

package org.frisket.imports.hpgl;

import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.stream.DoubleStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.imports.UnreadableArtException;

/** Cuts a file into instructions. Labels and what controls the line to the machine are passed over. */
final class InstructionReader {

	private static final int ESCAPE = 27;
	/** Ends a label unless DT names another character. */
	private static final int END_OF_TEXT = 3;
	private static final double LARGEST = 1e9;
	private static final int LONGEST_NUMBER = 40;

	private final String file;
	private final InputStream in;
	private long position;
	private int current;
	private int labelEnd = END_OF_TEXT;

	/** @param in buffered */
	InstructionReader(String file, InputStream in) throws IOException {
		this.file = file;
		this.in = in;
		advance();
	}

	private void advance() throws IOException {
		current = in.read();
		position++;
	}

	/** The next one, or null at the end of the file. */
	Instruction next() throws IOException, UnreadableArtException {
		while (current >= 0) {
			if (current == ESCAPE) {
				control();
			} else if (isLetter(current)) {
				long start = position;
				char first = (char) current;
				advance();
				if (isLetter(current)) {
					String mnemonic = ("" + first + (char) current).toUpperCase(Locale.ROOT);
					advance();
					return instruction(mnemonic, start);
				}
			} else {
				advance();
			}
		}
		return null;
	}

	private static boolean isLetter(int c) {
		return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
	}

	/** Escape sequences end with a capital letter or a colon; those of one letter behind a point have nothing more. */
	private void control() throws IOException {
		advance();
		boolean device = current == '.';
		if (device) {
			advance();
		}
		while (current >= 0 && !(current >= '@' && current <= 'Z') && current != ':' && !(device && current == ';')) {
			advance();
		}
		if (current >= 0) {
			advance();
		}
	}

	private Instruction instruction(String mnemonic, long start) throws IOException, UnreadableArtException {
		return switch (mnemonic) {
		case "LB", "BL" -> {
			while (current >= 0 && current != labelEnd) {
				advance();
			}
			advance();
			yield new Instruction(mnemonic, new double[0], "", start);
		}
		case "CO" -> {
			skipComment();
			yield new Instruction(mnemonic, new double[0], "", start);
		}
		case "DT" -> {
			labelEnd = current == ';' || current < 0 ? END_OF_TEXT : current;
			advance();
			yield new Instruction(mnemonic, new double[0], "", start);
		}
		case "PE" -> {
			StringBuilder raw = new StringBuilder();
			while (current >= 0 && current != ';') {
				raw.append((char) current);
				advance();
			}
			yield new Instruction(mnemonic, new double[0], raw.toString(), start);
		}
		default -> new Instruction(mnemonic, numbers(), "", start);
		};
	}

	/** In quotation marks, and its letters are no instructions. */
	private void skipComment() throws IOException {
		while (current == ' ') {
			advance();
		}
		if (current == '"') {
			advance();
			while (current >= 0 && current != '"') {
				advance();
			}
			advance();
		}
	}

	/** Up to the next mnemonic or semicolon; separated by commas, spaces or signs. */
	private double[] numbers() throws IOException, UnreadableArtException {
		DoubleStream.Builder numbers = DoubleStream.builder();
		int count = 0;
		long start = position;
		while (current >= 0 && current != ';' && current != ESCAPE && !isLetter(current)) {
			if (current == '+' || current == '-' || current == '.' || current >= '0' && current <= '9') {
				numbers.add(number());
				if (++count > Plotter.MOST) {
					throw failure(start, NLS.bind(Messages.Plotter_tooMany, Plotter.MOST));
				}
			} else {
				advance();
			}
		}
		return numbers.build().toArray();
	}

	private double number() throws IOException, UnreadableArtException {
		StringBuilder text = new StringBuilder();
		long start = position;
		do {
			text.append((char) current);
			advance();
		} while (current >= '0' && current <= '9' || current == '.');
		try {
			double number = Double.parseDouble(text.toString());
			if (Math.abs(number) <= LARGEST && text.length() <= LONGEST_NUMBER) {
				return number;
			}
		} catch (NumberFormatException e) {
			// told below
		}
		throw failure(start, NLS.bind(Messages.InstructionReader_number,
				text.length() > LONGEST_NUMBER ? text.substring(0, LONGEST_NUMBER) + "…" : text));
	}

	UnreadableArtException failure(long at, String reason) {
		return new UnreadableArtException(file, place(at), reason);
	}

	static String place(long at) {
		return NLS.bind(Messages.place_byte, at);
	}
}

package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Holds the pointer and the keys: one xdotool for all tests, told line by line. To start one for each move costs a
 * hundred times what the move does.
 */
final class Hand {

	/** Is answered after all that was sent before. It asks the root window, which never closes. */
	private static final String QUESTION = "get_num_desktops";
	/** What a key is held for. By itself xdotool takes longer, for programs that would miss a key. */
	private static final String KEY_MS = "1";

	private static Hand held;

	private final Process process;
	private final OutputStream lines;
	private final InputStream answers;
	private String heard = "";
	private int asked;
	private int answered;

	private Hand() {
		try {
			// by itself it answers when much has come together
			process = new ProcessBuilder("stdbuf", "-oL", "xdotool", "-").redirectErrorStream(true).start();
		} catch (IOException e) {
			throw new UncheckedIOException("the user interface tests need xdotool", e);
		}
		lines = process.getOutputStream();
		answers = process.getInputStream();
		Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
	}

	/** The one that is there. */
	static Hand get() {
		if (held == null || !held.process.isAlive()) {
			held = new Hand();
		}
		return held;
	}

	/**
	 * Tells what to do next, in words of xdotool. @return what to ask {@link #isDone} for, as a key may open a window in
	 * which other keys are pressed before anybody asks
	 */
	int begin(String... command) {
		String line = words(command) + "\n" + QUESTION + "\n";
		try {
			lines.write(line.getBytes(StandardCharsets.UTF_8));
			lines.flush();
		} catch (IOException e) {
			throw new UncheckedIOException("xdotool is gone", e);
		}
		return ++asked;
	}

	/** Whether the window system has all of it; fails if xdotool says that it could not. */
	boolean isDone(int told) {
		try {
			heard += new String(answers.readNBytes(answers.available()), StandardCharsets.UTF_8);
		} catch (IOException e) {
			throw new UncheckedIOException("xdotool is gone", e);
		}
		for (int end = heard.indexOf('\n'); end >= 0; end = heard.indexOf('\n')) {
			String line = heard.substring(0, end);
			heard = heard.substring(end + 1);
			if (!line.matches("\\d+")) {
				process.destroy();
				throw new AssertionError("xdotool: " + line);
			}
			answered++;
		}
		assertTrue(answered >= told || process.isAlive(), "xdotool is gone");
		return answered >= told;
	}

	private static String words(String... command) {
		String rest = Arrays.stream(command).skip(1).map(Hand::word).collect(Collectors.joining(" "));
		boolean keys = command[0].startsWith("key");
		return command[0] + (keys ? " --delay " + KEY_MS + " " : " ") + rest;
	}

	/** As one word for xdotool, which knows quotes, but no way to write one within them. */
	private static String word(String word) {
		if (word.matches("[\\w+.-]+")) {
			return word;
		}
		String quote = word.contains("\"") ? "'" : "\"";
		if (word.isEmpty() || word.contains(quote) || word.contains("\n") || word.startsWith("$")) {
			throw new IllegalArgumentException("cannot be told: " + word);
		}
		return quote + word + quote;
	}
}

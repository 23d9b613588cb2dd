package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The library GEOS, asked through Debian's python3-shapely: each line of questions is answered by a line of numbers. */
public final class Geos {

	private static final String PYTHON = "/usr/bin/python3";

	private Geos() {
	}

	public static boolean isInstalled() {
		try {
			return new ProcessBuilder(PYTHON, "-c", "import shapely").redirectErrorStream(true).start().waitFor() == 0;
		} catch (IOException | InterruptedException e) {
			return false;
		}
	}

	/** @param script reads the questions from its standard input */
	public static List<double[]> answers(String script, List<String> questions) throws IOException, InterruptedException {
		Process process = new ProcessBuilder(PYTHON, "-c", script).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] lines = String.join("\n", questions).getBytes(StandardCharsets.UTF_8);
		Thread asking = new Thread(() -> {
			try (OutputStream in = process.getOutputStream()) {
				in.write(lines);
			} catch (IOException e) {
				// the status tells
			}
		});
		asking.start();
		List<double[]> answers = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.map(line -> Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray()).toList();
		asking.join();
		assertEquals(0, process.waitFor());
		assertEquals(questions.size(), answers.size());
		return answers;
	}

	/** Rings as a list of lists of coordinates. */
	public static String json(List<Contour> contours, double deviation) {
		return contours.stream().map(c -> c.flattened(deviation).stream().map(p -> "[" + p.x() + "," + p.y() + "]")
				.collect(Collectors.joining(",", "[", "]"))).collect(Collectors.joining(",", "[", "]"));
	}

	/** Pieces as a list of lists of rings, the outer one first. */
	public static String json(Region region, double deviation) {
		return region.pieces().stream().map(piece -> json(piece.contours(), deviation))
				.collect(Collectors.joining(",", "[", "]"));
	}
}

package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The library GEOS, asked through Debian's python3-shapely. */
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

	/** Rings as a list of lists of coordinates, in JSON. */
	public static String json(List<Contour> contours, double deviation) {
		return contours.stream().map(c -> c.flattened(deviation).stream().map(p -> "[" + p.x() + "," + p.y() + "]")
				.collect(Collectors.joining(",", "[", "]"))).collect(Collectors.joining(",", "[", "]"));
	}

	/** What a script prints for each line of its input: numbers with blanks between. */
	public static List<double[]> answers(String script, List<String> lines) throws IOException, InterruptedException {
		Process process = new ProcessBuilder(PYTHON, "-c", script).redirectError(ProcessBuilder.Redirect.INHERIT).start();
		byte[] questions = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
		Thread asking = new Thread(() -> {
			try (OutputStream in = process.getOutputStream()) {
				in.write(questions);
			} catch (IOException e) {
				// the status tells
			}
		});
		asking.start();
		List<double[]> answers = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.map(line -> Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray()).toList();
		asking.join();
		assertEquals(0, process.waitFor());
		assertEquals(lines.size(), answers.size());
		return answers;
	}
}

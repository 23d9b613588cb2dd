package org.frisket.imports.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.UnreadableArtException;
import org.frisket.testkit.Mutants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files written by Debian's python3-ezdxf, and what that library says of their curves. */
class DxfAgainstEzdxfTest {

	private static final String PYTHON = "/usr/bin/python3";

	/** Writes a file, then a line for each entity in order: length and box of its path, flattened finely. */
	private static final String WRITER = """
			import sys, math, random, ezdxf
			from ezdxf import path
			from ezdxf.disassemble import recursive_decompose
			version, file = sys.argv[1], sys.argv[2]
			r = random.Random(7)
			doc = ezdxf.new(version, units=4)
			m = doc.modelspace()
			p = lambda: (r.uniform(-90, 90), r.uniform(-90, 90))
			for i in range(12):
			    m.add_line(p(), p())
			    m.add_circle(p(), r.uniform(1, 50))
			    m.add_arc(p(), r.uniform(1, 50), r.uniform(0, 360), r.uniform(0, 360))
			    m.add_polyline2d([(*p(), 0, 0, r.uniform(-2, 2)) for _ in range(5)], format='xyseb', close=i % 2 == 0)
			    if version != 'R12':
			        m.add_lwpolyline([(*p(), r.uniform(-2, 2)) for _ in range(5)], format='xyb', close=i % 2 == 0)
			        m.add_ellipse(p(), p(), r.uniform(0.1, 1), r.uniform(0, 3), r.uniform(3.1, 6))
			        m.add_open_spline([(*p(), 0) for _ in range(7)], degree=2 + i % 4)
			        m.add_rational_spline([(*p(), 0) for _ in range(6)], [r.uniform(0.3, 3) for _ in range(6)], degree=3)
			b = doc.blocks.new('leaf', base_point=(3, 4))
			b.add_arc((1, 2), 5, 20, 200)
			b.add_line((0, 0), (9, 5))
			for i in range(4):
			    m.add_blockref('leaf', p(), dxfattribs={'xscale': 1.5, 'yscale': 1.5 if i % 2 else -1.5, 'rotation': 30 * i})
			doc.saveas(file)
			for e in recursive_decompose(m):
			    curve = e.construction_tool() if e.dxftype() == 'SPLINE' else path.make_path(e)
			    v = list(curve.flattening(0.0005, segments=16))
			    x = [q.x for q in v]; y = [-q.y for q in v]
			    print(sum(a.distance(c) for a, c in zip(v, v[1:])), min(x), min(y), max(x), max(y))
			""";

	private static boolean installed() {
		try {
			return new ProcessBuilder(PYTHON, "-c", "import ezdxf").redirectErrorStream(true).start().waitFor() == 0;
		} catch (IOException | InterruptedException e) {
			return false;
		}
	}

	private static List<String> written(String version, Path file) throws IOException, InterruptedException {
		Process process = new ProcessBuilder(PYTHON, "-c", WRITER, version, file.toString())
				.redirectError(ProcessBuilder.Redirect.INHERIT).start();
		List<String> lines = new String(process.getInputStream().readAllBytes()).lines().toList();
		assertEquals(0, process.waitFor());
		return lines;
	}

	@Test
	void curvesAreWhatTheirWriterSays(@TempDir Path folder) throws Exception {
		assumeTrue(installed(), "python3-ezdxf is not installed");
		for (String version : List.of("R12", "R2000", "R2010", "R2018")) {
			Path file = folder.resolve(version + ".dxf");
			List<String> expected = written(version, file);
			List<ImportedShape.Lines> lines = Dxf.lines(Dxf.read(Files.readAllBytes(file), "file"));
			assertTrue(expected.size() > 40, "the writer wrote " + expected.size());
			assertEquals(expected.size(), lines.size(), version);
			for (int i = 0; i < lines.size(); i++) {
				compare(expected.get(i).split(" "), lines.get(i), version + ", entity " + i);
			}
		}
	}

	/** Either curves come out of a damaged file, or a reason; never anything else. */
	@Test
	void mutantsOfItsFilesNeitherCrashNorHang(@TempDir Path folder) throws Exception {
		assumeTrue(installed(), "python3-ezdxf is not installed");
		Random random = new Random(20_261_129);
		int read = 0;
		int refused = 0;
		for (String version : List.of("R12", "R2000", "R2010", "R2018")) {
			Path file = folder.resolve(version + ".dxf");
			written(version, file);
			byte[] whole = Files.readAllBytes(file);
			for (int i = 0; i < 100; i++) {
				try {
					for (ImportedShape.Lines lines : Dxf.lines(Dxf.read(Mutants.of(whole, random), "file"))) {
						assertTrue(Double.isFinite(lines.bounds().width()), version);
					}
					read++;
				} catch (UnreadableArtException e) {
					assertTrue(e.getMessage().startsWith("plate.dxf"), e.getMessage());
					refused++;
				}
			}
		}
		assertTrue(read > 60 && refused > 60, read + " read, " + refused + " refused");
	}

	/** The library draws quarter turns by one cubic, which may miss a circle of 90 mm by 0.025. */
	private static void compare(String[] expected, ImportedShape.Lines lines, String what) {
		double length = Double.parseDouble(expected[0]);
		assertEquals(length, lines.outline().contours().stream().mapToDouble(Contour::length).sum(),
				0.01 + length * 3e-4, what);
		Bounds bounds = lines.outline().bounds();
		double[] box = { bounds.minX(), bounds.minY(), bounds.maxX(), bounds.maxY() };
		for (int i = 0; i < 4; i++) {
			assertEquals(Double.parseDouble(expected[i + 1]), box[i], 0.05, what);
		}
	}
}

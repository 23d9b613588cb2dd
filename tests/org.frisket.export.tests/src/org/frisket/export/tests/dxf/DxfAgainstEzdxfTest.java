package org.frisket.export.tests.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

import org.frisket.export.Handoff;
import org.frisket.export.OperationInk;
import org.frisket.export.tests.Format;
import org.frisket.geometry.Region;
import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files as Debian's python3-ezdxf reads them: it finds nothing wrong, and measures what we measure. */
class DxfAgainstEzdxfTest {

	private static final String PYTHON = "/usr/bin/python3";

	/**
	 * Says what its audit finds; then of each layer: name, colour, dashes, entities, length, and area between its contours
	 * as they run, with arcs from their bulges by the formulas of a circle's segment.
	 */
	private static final String READER = """
			import sys, math, ezdxf
			from ezdxf import colors
			from ezdxf.math import bulge_radius
			doc = ezdxf.readfile(sys.argv[1])
			audit = doc.audit()
			print(doc.dxfversion, len(audit.errors), len(audit.fixes))
			for problem in audit.errors + audit.fixes:
			    print(problem.message, file=sys.stderr)
			found = {}
			for e in doc.modelspace():
			    f = found.setdefault(e.dxf.layer, [0, 0.0, 0.0])
			    f[0] += 1
			    if e.dxftype() == 'LINE':
			        f[1] += e.dxf.start.distance(e.dxf.end)
			    elif e.dxftype() == 'POLYLINE':
			        v = [(w.dxf.location.x, w.dxf.location.y, w.dxf.bulge) for w in e.vertices]
			        for (x, y, b), (p, q, _) in zip(v, v[1:] + (v[:1] if e.is_closed else [])):
			            chord = math.hypot(p - x, q - y)
			            f[2] += (x * q - p * y) / 2
			            if b:
			                r = bulge_radius((x, y), (p, q), b)
			                a = 4 * math.atan(b)
			                f[1] += r * abs(a)
			                f[2] += r * r / 2 * (a - math.sin(a))
			            else:
			                f[1] += chord
			for name, f in found.items():
			    layer = doc.layers.get(name)
			    pattern = doc.linetypes.get(layer.dxf.linetype)
			    dashes = [t.value for t in pattern.pattern_tags.tags if t.code == 49]
			    print(name, '#%02x%02x%02x' % tuple(colors.aci2rgb(layer.color)), ','.join('%.6g' % d for d in dashes) or '-', *f)
			print('extent', *doc.header['$EXTMIN'][:2], *doc.header['$EXTMAX'][:2])
			""";

	@TempDir
	private Path folder;

	private static boolean installed() {
		try {
			return new ProcessBuilder(PYTHON, "-c", "import ezdxf").redirectErrorStream(true).start().waitFor() == 0;
		} catch (IOException | InterruptedException e) {
			return false;
		}
	}

	private List<String> read(PreparedJob job, Map<String, String> options) throws Exception {
		assumeTrue(installed(), "python3-ezdxf is not installed");
		Path file = folder.resolve("job.dxf");
		Files.write(file, new Format("dxf").bytes(Handoff.of(job), options));
		Process process = new ProcessBuilder(PYTHON, "-c", READER, file.toString())
				.redirectError(ProcessBuilder.Redirect.INHERIT).start();
		List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();
		assertEquals(0, process.waitFor());
		assertEquals("AC1009 0 0", lines.get(0));
		return lines;
	}

	@Test
	void areasAndLengthsAreOurs() throws Exception {
		Job job = new Composition("Ferry & Co", SampleJobs.face("Liberation Serif Bold"), 30, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(4.0), OperationKind.CUT).toJob();
		job.getLayers().get(0).setName("Mat");
		job.getLayers().get(1).setName("Front");
		PreparedJob prepared = SampleJobs.prepared(job);
		for (double mm : new double[] { 1, 25.4 }) {
			List<String> lines = read(prepared, Map.of("unit", mm == 1 ? "mm" : "in", "tolerance", "0.002mm"));
			assertEquals(4, lines.size(), lines.toString());
			for (int i = 0; i < 2; i++) {
				Region region = prepared.layers().get(i).elements().get(0).region();
				String[] words = lines.get(i + 1).split(" ");
				assertEquals(i == 0 ? "CUT_MAT" : "CUT_FRONT", words[0]);
				assertEquals(region.contours().size(), Integer.parseInt(words[3]));
				assertEquals(region.perimeter(), Double.parseDouble(words[4]) * mm, region.perimeter() * 2e-5);
				// outer contours run counter-clockwise as seen, holes the other way: sums of areas are what is left
				assertEquals(region.area(), Double.parseDouble(words[5]) * mm * mm, region.perimeter() * 0.002);
			}
			double width = prepared.visibleBounds().width();
			String[] extent = lines.get(3).split(" ");
			assertEquals(5, Double.parseDouble(extent[1]) * mm, 0.001);
			assertEquals(width, (Double.parseDouble(extent[3]) - Double.parseDouble(extent[1])) * mm, 0.001);
		}
	}

	@Test
	void everyOperationHasItsLayerItsColourAndItsDashes() throws Exception {
		Job job = Jobs.create("job", "Operations");
		for (OperationKind kind : OperationKind.values()) {
			Layer layer = Jobs.addLayer(job, kind.getName());
			Jobs.addOperation(Jobs.addOutline(layer, "M0 0H40V20H0Z"), kind);
		}
		List<String> lines = read(SampleJobs.prepared(job), Map.of());
		Map<String, String[]> found = new HashMap<>();
		lines.subList(1, lines.size() - 1).forEach(line -> found.put(line.split(" ")[0].split("_")[0], line.split(" ")));
		assertEquals(OperationKind.values().length, found.size());
		for (OperationKind kind : OperationKind.values()) {
			String[] words = found.get(OperationInk.word(kind).toUpperCase(Locale.ROOT));
			OperationInk ink = OperationInk.of(kind);
			assertTrue(apart(ink.colour(), words[1]) < 50, kind + " is " + words[1]);
			for (OperationKind other : OperationKind.values()) {
				assertTrue(apart(ink.colour(), words[1]) <= apart(OperationInk.of(other).colour(), words[1]),
						kind + " looks like " + other);
			}
			StringBuilder dashes = new StringBuilder();
			for (int i = 0; i < ink.pattern().size(); i++) {
				dashes.append(i == 0 ? "" : ",").append(i % 2 == 0 ? "" : "-").append(
						ink.pattern().get(i).toString().replaceAll("\\.0$", ""));
			}
			assertEquals(dashes.isEmpty() ? "-" : dashes.toString(), words[2], kind.toString());
			assertEquals(120, Double.parseDouble(words[4]), 1e-3);
		}
	}

	/** How far colours are apart in red, green and blue. */
	private static double apart(String one, String other) {
		double sum = 0;
		for (int i = 1; i < 7; i += 2) {
			sum += Math.pow(Integer.parseInt(one.substring(i, i + 2), 16) - Integer.parseInt(other.substring(i, i + 2), 16), 2);
		}
		return Math.sqrt(sum);
	}

	@Test
	void emptyDrawingIsOneToo() throws Exception {
		PreparedJob nothing = SampleJobs.prepared(Jobs.create("job", "Nothing yet"));
		assertEquals(2, read(nothing, Map.of()).size());
		assertEquals(0, nothing.layers().stream().map(PreparedLayer::elements).mapToInt(List::size).sum());
	}
}

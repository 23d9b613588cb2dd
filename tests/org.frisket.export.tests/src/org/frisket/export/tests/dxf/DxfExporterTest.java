package org.frisket.export.tests.dxf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.export.tests.Format;
import org.frisket.export.tests.Runs;
import org.frisket.geometry.Transform;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class DxfExporterTest extends ExporterContract {

	private static final Format DXF = new Format("dxf");

	@Override
	protected Exporter exporter() {
		return DXF.exporter();
	}

	private static String text(Job job, Map<String, String> options) throws IOException {
		return DXF.text(Handoff.of(SampleJobs.prepared(job)), options);
	}

	/** Pairs as "code value", from the name of the section with the entities on. */
	private static List<String> entities(String text) {
		String[] lines = text.split("\n");
		List<String> pairs = new ArrayList<>();
		boolean within = false;
		for (int i = 0; i + 1 < lines.length; i += 2) {
			within |= lines[i + 1].equals("ENTITIES");
			if (within) {
				pairs.add(lines[i].strip() + " " + lines[i + 1]);
			}
		}
		return pairs;
	}

	private static List<String> values(List<String> pairs, String code) {
		return pairs.stream().filter(pair -> pair.startsWith(code + " ")).map(pair -> pair.substring(code.length() + 1))
				.toList();
	}

	@Test
	void squareIsAClosedPolylineWithItsOriginBelow() throws IOException {
		List<String> pairs = entities(text(SampleJobs.outline("M100 50h20v10h-20Z", OperationKind.CUT), Map.of()));
		assertEquals(List.of("POLYLINE", "VERTEX", "VERTEX", "VERTEX", "VERTEX", "SEQEND", "ENDSEC", "EOF"),
				values(pairs, "0"));
		assertEquals(List.of("1"), values(pairs, "70"));
		assertTrue(values(pairs, "8").stream().allMatch("CUT_CARD"::equals), pairs.toString());
		// 5 mm of margin, then 20 by 10
		assertEquals(List.of("25.0000", "5.0000"), values(pairs, "10").stream().skip(1).distinct().sorted().toList());
		assertEquals(List.of("15.0000", "5.0000"), values(pairs, "20").stream().skip(1).distinct().sorted().toList());
		assertEquals(List.of(), values(pairs, "42"));
	}

	@Test
	void inchesAreInches() throws IOException {
		String text = text(SampleJobs.outline("M0 0h25.4v12.7h-25.4Z", OperationKind.CUT),
				Map.of("unit", "in", "margin", "1in"));
		assertTrue(text.contains("lengths in inch"), text.substring(0, 100));
		assertEquals(List.of("1.000000", "2.000000"),
				values(entities(text), "10").stream().skip(1).distinct().sorted().toList());
	}

	/** Bulge is the tangent of a quarter of the angle (DXF R12 reference, VERTEX): round a circle the angles make a turn. */
	@Test
	void bulgesOfACircleMakeAWholeTurn() throws IOException {
		List<String> pairs = entities(
				text(SampleJobs.outline("M0 0A25 25 0 0 1 50 0A25 25 0 0 1 0 0Z", OperationKind.CUT), Map.of()));
		double turn = values(pairs, "42").stream().mapToDouble(bulge -> 4 * Math.atan(Double.parseDouble(bulge))).sum();
		// outer contours run counter-clockwise to the viewer
		assertEquals(2 * Math.PI, turn, 1e-3);
		assertTrue(values(pairs, "42").size() <= 16, pairs.toString());
	}

	@Test
	void openLinesStayOpen() throws IOException {
		assertEquals(List.of("LINE", "ENDSEC", "EOF"),
				values(entities(text(SampleJobs.outline("M0 0L10 5", OperationKind.DRAW), Map.of())), "0"));
		List<String> bent = entities(text(SampleJobs.outline("M0 0L10 5L20 0", OperationKind.DRAW), Map.of()));
		assertEquals("POLYLINE", values(bent, "0").get(0));
		assertEquals(List.of("0"), values(bent, "70"));
	}

	@Test
	void dashesAreNotBrokenUpAgain() throws IOException {
		Job job = SampleJobs.outline("M0 0H100", OperationKind.CREASE);
		List<String> whole = entities(text(job, Map.of()));
		assertEquals(1, values(whole, "0").stream().filter("LINE"::equals).count());
		assertEquals(List.of(), values(whole, "6"));
		job.getLayers().get(0).getElements().get(0).getOperations().get(0).setDash(4);
		job.getLayers().get(0).getElements().get(0).getOperations().get(0).setGap(2);
		List<String> dashed = entities(text(job, Map.of()));
		assertTrue(values(dashed, "0").stream().filter("LINE"::equals).count() > 10, dashed.toString());
		assertEquals(List.of("CONTINUOUS"), values(dashed, "6").stream().distinct().toList());
	}

	@Test
	void layersHaveNamesThatR12Allows() throws IOException {
		Job job = Jobs.create("job", "Names");
		for (String name : List.of("Größe 3/4 mm", "größe 3-4 mm", "", "☂", "A very long name for a layer of card indeed",
				"A very long name for a layer of card at last")) {
			Layer layer = Jobs.addLayer(job, name);
			Outline outline = Jobs.addOutline(layer, "M0 0H10V10H0Z");
			Jobs.addOperation(outline, OperationKind.KISS_CUT);
			Jobs.addOperation(outline, OperationKind.DRAW);
		}
		TreeSet<String> names = new TreeSet<>(values(entities(text(job, Map.of())), "8"));
		assertEquals(12, names.size(), names.toString());
		names.forEach(name -> assertTrue(name.matches("[A-Z0-9$_-]{1,31}"), name));
		assertTrue(names.containsAll(List.of("KISS-CUT_GROSSE_3_4_MM", "DRAW_GROSSE_3-4_MM", "DRAW")), names.toString());
	}

	@Test
	void hiddenLayersAreLeftOut() throws IOException {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		job.getLayers().get(0).setVisible(false);
		assertEquals(List.of("ENDSEC", "EOF"), values(entities(text(job, Map.of())), "0"));
	}

	@Test
	void numbersAreTheSameInEveryCountry() throws IOException {
		Job job = SampleJobs.giftTag();
		byte[] bytes = exported(job);
		Locale before = Locale.getDefault();
		Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
		try {
			assertArrayEquals(bytes, exported(job));
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void whatLiesTooFarAwayIsRefusedByName() {
		PreparedJob job = SampleJobs.prepared(SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT));
		PreparedElement far = job.layers().get(0).elements().get(0).moved(Transform.translation(1e9, 0));
		PreparedJob moved = new PreparedJob(job.job(),
				List.of(new PreparedLayer(job.layers().get(0).layer(), List.of(far))));
		IOException refusal = assertThrows(IOException.class, () -> DXF.bytes(Handoff.of(moved), Map.of()));
		assertTrue(refusal.getMessage().contains("Shape"), refusal.getMessage());
	}

	/** Our importer reads what was written: the same lengths, in either unit. */
	@Test
	void importerReadsTheSameLinesBack() throws Exception {
		PreparedJob job = SampleJobs.prepared(SampleJobs.giftTag());
		double length = job.layers().stream().flatMap(layer -> layer.shown().stream())
				.mapToDouble(element -> element.region().perimeter()).sum();
		for (String unit : List.of("mm", "in")) {
			List<ImportedLayer> layers = DXF.readBack(DXF.bytes(Handoff.of(job), Map.of("unit", unit)), Map.of("unit", unit));
			assertEquals(3, layers.size());
			assertTrue(layers.get(0).name().startsWith("CUT"), layers.get(0).name());
			assertEquals(length, Format.length(layers), length * 1e-4);
			for (ImportedLayer layer : layers) {
				assertFalse(layer.shapes().isEmpty());
				layer.shapes().forEach(shape -> assertTrue(((ImportedShape.Lines) shape).outline().contours().get(0).isClosed()));
			}
		}
	}

	@Test
	void coarserToleranceMakesFewerVertices() throws IOException {
		Handoff handoff = Runs.planned("M0 0C30 -40 60 40 90 0V50H0Z", OperationKind.CUT);
		long fine = DXF.text(handoff, Map.of("tolerance", "0.001mm")).split("VERTEX").length;
		long coarse = DXF.text(handoff, Map.of("tolerance", "0.2mm")).split("VERTEX").length;
		assertTrue(fine > coarse + 2, fine + " and " + coarse);
	}
}

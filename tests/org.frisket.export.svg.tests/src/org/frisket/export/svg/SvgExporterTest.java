package org.frisket.export.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.run.Workshop;
import org.frisket.sheets.LaidSheets;
import org.frisket.testkit.ExporterContract;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class SvgExporterTest extends ExporterContract {

	@Override
	protected Exporter exporter() {
		return new SvgExporter();
	}

	private Document document(Job job, Map<String, String> options) throws Exception {
		return document(Handoff.of(SampleJobs.prepared(job)), options);
	}

	private Document document(Handoff handoff, Map<String, String> options) throws Exception {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter().export(handoff, OptionValues.of(exporter().options(), options), Monitor.NONE, out);
		DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
		factory.setNamespaceAware(true);
		return factory.newDocumentBuilder().parse(new ByteArrayInputStream(out.toByteArray()));
	}

	private static List<Element> elements(Document document, String name) {
		NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
		List<Element> elements = new ArrayList<>();
		for (int i = 0; i < nodes.getLength(); i++) {
			elements.add((Element) nodes.item(i));
		}
		return elements;
	}

	@Test
	void sizeIsInMillimetresAndMatchesTheViewBox() throws Exception {
		Element root = document(SampleJobs.outline("M-20 -10H80V40H-20Z", OperationKind.CUT), Map.of("margin", "2mm"))
				.getDocumentElement();
		assertEquals("104mm", root.getAttribute("width"));
		assertEquals("54mm", root.getAttribute("height"));
		assertEquals("0 0 104 54", root.getAttribute("viewBox"));
	}

	/** Twice worked and with lines, so that each copy is written in several pieces. */
	@Test
	void copiesOnASheetHaveIdsOfTheirOwn() throws Exception {
		Job job = SampleJobs.outline("M0 0H20V20H0Z", OperationKind.CUT);
		Jobs.addOperation(Jobs.elements(job).get(0), OperationKind.CREASE);
		String part = Jobs.elements(job).get(0).getId();
		Sheet sheet = Jobs.addSheet(job, null, 305, 210);
		for (int i = 0; i < 8; i++) {
			Jobs.addPlacement(sheet, part, 30 + 30 * i, 100, 0);
		}
		Handoff handoff = Handoff.of(LaidSheets.of(job, Map.of(job.getId(), SampleJobs.prepared(job)), Tolerance.DEFAULT,
				Monitor.NONE).get(0), Workshop.plain(), RunChoices.plain());
		Document document = document(handoff, Map.of());
		List<String> ids = elements(document, "*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).toList();
		assertEquals(17, ids.size());
		assertEquals(ids.size(), Set.copyOf(ids).size(), ids::toString);
		assertTrue(ids.containsAll(List.of(sheet.getId(), part + "-cut", part + "-cut-2", part + "-crease-8")), ids::toString);
	}

	@Test
	void idsAreNamesOfXmlAndAreNotGivenTwice() {
		UniqueIds ids = new UniqueIds();
		ids.take("print-hatch");
		assertEquals(List.of("e1", "e1-2", "e1-2-2", "e1-3", "print-hatch-2", "part-7", "a_b_", "part", "part-2"),
				Stream.of("e1", "e1", "e1-2", "e1", "print-hatch", "7", "a b:", null, "").map(ids::next).toList());
	}

	@Test
	void layerMayHaveNoName() throws Exception {
		Job job = SampleJobs.outline("M0 0H20V20H0Z", OperationKind.CUT);
		job.getLayers().get(0).setName(null);
		Element group = elements(document(job, Map.of()), "g").get(0);
		assertEquals(job.getLayers().get(0).getId(), group.getAttribute("id"));
		assertFalse(group.hasAttribute("data-layer"));
	}

	@Test
	void perforationWithDashesIsWrittenInDashes() throws Exception {
		Job job = SampleJobs.outline("M0 0V10H10V0Z", OperationKind.PERFORATE);
		Element plain = elements(document(job, Map.of()), "path").get(0);
		assertFalse(plain.getAttribute("stroke-dasharray").isEmpty());
		Operation operation = Jobs.elements(job).get(0).getOperations().get(0);
		operation.setDash(3);
		operation.setGap(2);
		Element dashed = elements(document(job, Map.of()), "path").get(0);
		assertEquals("", dashed.getAttribute("stroke-dasharray"));
		// two to a side, of which one lies over each corner
		assertEquals(8, dashed.getAttribute("d").chars().filter(c -> c == 'M').count());
		assertFalse(dashed.getAttribute("d").contains("Z"));
	}

	@Test
	void coordinatesAreMillimetresFromTheMargin() throws Exception {
		Document document = document(SampleJobs.outline("M-20 -10H80V40H-20Z", OperationKind.CUT),
				Map.of("margin", "2mm"));
		String data = elements(document, "path").get(0).getAttribute("d");
		for (String corner : List.of("2 2", "102 2", "102 52", "2 52")) {
			assertTrue(data.replace(',', ' ').contains(corner), data);
		}
	}

	@Test
	void eachLayerIsAGroupWithItsNameFromTheBackToTheFront() throws Exception {
		List<Element> groups = elements(document(SampleJobs.giftTag(), Map.of()), "g");
		assertEquals(List.of("Mat 6 mm", "Mat 3 mm", "Wording"),
				groups.stream().map(g -> g.getAttribute("data-layer")).toList());
	}

	@Test
	void eachRegionIsOnePathWithItsOperation() throws Exception {
		List<Element> paths = elements(document(SampleJobs.giftTag(), Map.of()), "path");
		assertEquals(3, paths.size());
		paths.forEach(path -> assertEquals("cut", path.getAttribute("data-operation")));
		long contours = paths.get(2).getAttribute("d").chars().filter(c -> c == 'M').count();
		assertEquals(11, contours, "outer contours of seven letters and a dot; counters of a, and two of g");
	}

	@Test
	void operationsDifferInPatternHueAndWord() throws Exception {
		List<String> looks = new ArrayList<>();
		for (OperationKind kind : OperationKind.values()) {
			Element path = elements(document(SampleJobs.outline("M0 0H10V10H0Z", kind), Map.of()), "path").stream()
					.filter(p -> p.hasAttribute("data-operation")).findFirst().orElseThrow();
			looks.add(path.getAttribute("data-operation"));
			looks.add(path.getAttribute("stroke"));
		}
		assertEquals(looks.size(), looks.stream().distinct().count(), looks.toString());
	}

	@Test
	void penLinesAreNeverFilled() throws Exception {
		Element path = elements(document(SampleJobs.outline("M0 0H10V10H0Z", OperationKind.DRAW), Map.of()), "path")
				.get(0);
		assertEquals("none", path.getAttribute("fill"));
	}

	@Test
	void curvesLeaveAsCurves() throws Exception {
		String data = elements(document(SampleJobs.giftTag(), Map.of()), "path").get(2).getAttribute("d");
		assertTrue(data.contains("C"), data);
		assertTrue(data.length() < 10_000, "not a thousand short lines: " + data.length());
	}

	@Test
	void titlesAndColoursCannotBreakOutOfTheFile() throws Exception {
		Job job = SampleJobs.outline("M0 0H10V10H0Z", OperationKind.CUT);
		job.setTitle("</title><script>\u0001\uFFFF & \"tag\"");
		job.getLayers().get(0).setName("a\"><image href=\"file:///x\"/>");
		job.getLayers().get(0).setColour("url(file:///x)");
		Document document = document(job, Map.of());
		assertTrue(elements(document, "script").isEmpty());
		assertTrue(elements(document, "image").isEmpty());
		assertEquals("none", elements(document, "path").get(0).getAttribute("fill"));
		assertTrue(elements(document, "title").get(0).getTextContent().startsWith("</title><script>"));
	}

	@Test
	void hiddenLayersAreLeftOut() throws Exception {
		Job job = SampleJobs.giftTag();
		job.getLayers().get(0).setVisible(false);
		assertEquals(2, elements(document(job, Map.of()), "g").size());
	}

	@Test
	void openLinesHaveAPathOfTheirOwn() throws Exception {
		List<Element> paths = elements(
				document(SampleJobs.outline("M0 0H10V10H0Z M20 0L30 10", OperationKind.DRAW), Map.of()), "path");
		assertEquals(2, paths.size());
		assertFalse(paths.get(1).getAttribute("d").contains("Z"));
	}

	@Test
	void decimalsAreAtMostAsAskedFor() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter().export(Handoff.of(SampleJobs.prepared(SampleJobs.giftTag())),
				OptionValues.of(exporter().options(), Map.of("decimals", "1")), Monitor.NONE, out);
		String text = out.toString(java.nio.charset.StandardCharsets.UTF_8);
		assertFalse(text.replaceAll("version=\"1.1\"|<\\?xml[^>]*>", "").matches("(?s).*\\bd=\"[^\"]*\\.\\d\\d.*"));
	}
}

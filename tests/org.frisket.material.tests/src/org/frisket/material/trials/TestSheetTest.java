package org.frisket.material.trials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import javax.xml.parsers.DocumentBuilderFactory;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.PathData;
import org.frisket.material.StockFamily;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class TestSheetTest {

	static final LocalDate DAY = LocalDate.of(2031, 5, 17);

	static TestSheet sheet(String across, String down) {
		return new TestSheet("sheet-1", DAY, new StockFacts("harbour-white", StockFamily.CARD, 216, 0.3, 1),
				new Setup("plain", "blade", OperationKind.CUT), new Settings(0.4, 30, 30, 1), Sweep.parse(across),
				Sweep.parse(down), 0.25, new TreeMap<>());
	}

	@Test
	void sweepsAreReadAndWritten() {
		assertEquals(List.of(10.0, 15.0, 20.0, 25.0, 30.0), Sweep.parse("pressure=10..30/5").values());
		assertEquals(List.of(0.1, 0.2, 0.3), Sweep.parse("exposure=0.1..0.3/0.1").values());
		assertEquals(List.of(3.0, 1.0), Sweep.parse(" passes = 3,1 ").values());
		for (String text : List.of("pressure=10..30/5", "exposure=0.1..0.45/0.05", "speed=7")) {
			assertEquals(Sweep.parse(text), Sweep.parse(Sweep.parse(text).text()));
		}
		for (String wrong : List.of("", "pressure", "force=1..3/1", "pressure=3..1/1", "pressure=1..3/0", "pressure=a",
				"pressure=1,,2", "passes=1.5", "passes=0", "speed=5,5", "pressure=1..100/1", "pressure=-1")) {
			assertTrue(assertThrows(IllegalArgumentException.class, () -> Sweep.parse(wrong), wrong).getMessage()
					.length() > 20);
		}
	}

	@Test
	void everyCellHasTheSettingsOfItsColumnAndRow() {
		TestSheet sheet = sheet("pressure=10..30/5", "passes=1,2");
		assertEquals(10, sheet.places().size());
		assertEquals(new Settings(0.4, 20, 30, 2), sheet.settings(sheet.place("c2")));
		assertThrows(IllegalArgumentException.class, () -> sheet.place("F1"));
		assertThrows(IllegalArgumentException.class, () -> sheet("speed=1,2", "speed=1,2"));
	}

	@Test
	void onlyJudgedCellsAreTrials() {
		TestSheet sheet = sheet("pressure=10..30/5", "speed=10,20")
				.with(Map.of(new CellPlace(1, 0), Verdict.THROUGH, new CellPlace(0, 1), Verdict.TORN));
		assertEquals(List.of("sheet-1-B1", "sheet-1-A2"), sheet.trials().stream().map(Trial::id).toList());
		assertEquals(new Settings(0.4, 15, 10, 1), sheet.trials().get(0).settings());
		assertEquals(Verdict.CARRIER_CUT,
				sheet.with(Map.of(new CellPlace(1, 0), Verdict.CARRIER_CUT)).verdict(new CellPlace(1, 0)).orElseThrow());
		assertThrows(IllegalArgumentException.class, () -> sheet.with(Map.of(new CellPlace(5, 0), Verdict.TORN)));
	}

	/** Against blocks found by merging labels until nothing changes, which is another way to the same. */
	@Test
	void theWindowIsTheLargestBlockAndItsCentreLiesDeepest() {
		Random random = new Random(2);
		for (int round = 0; round < 500; round++) {
			TestSheet sheet = sheet("pressure=1..9/1", "speed=1..7/1");
			Map<CellPlace, Verdict> verdicts = new TreeMap<>();
			for (CellPlace place : sheet.places()) {
				if (random.nextInt(12) > 0) {
					verdicts.put(place, random.nextInt(10) < 6 ? Verdict.THROUGH : Verdict.values()[random.nextInt(5)]);
				}
			}
			TestSheet judged = sheet.with(verdicts);
			Map<CellPlace, Integer> labels = labels(judged);
			long largest = labels.values().stream().distinct()
					.mapToLong(label -> labels.values().stream().filter(label::equals).count()).max().orElse(0);
			assertEquals(largest, judged.window().map(window -> window.cells().size()).orElse(0).longValue());
			judged.window().ifPresent(window -> {
				assertEquals(1, window.cells().stream().map(labels::get).distinct().count());
				int deepest = window.cells().stream().mapToInt(place -> depth(place, new HashSet<>(window.cells()))).max()
						.orElseThrow();
				assertEquals(deepest, depth(window.centre(), new HashSet<>(window.cells())));
				assertEquals(deepest, window.margin());
			});
		}
	}

	private static Map<CellPlace, Integer> labels(TestSheet sheet) {
		Map<CellPlace, Integer> labels = new TreeMap<>();
		sheet.places().stream().filter(place -> sheet.verdict(place).equals(java.util.Optional.of(Verdict.THROUGH)))
				.forEach(place -> labels.put(place, labels.size()));
		boolean changed = true;
		while (changed) {
			changed = false;
			for (CellPlace a : labels.keySet()) {
				for (CellPlace b : labels.keySet()) {
					boolean beside = Math.abs(a.column() - b.column()) + Math.abs(a.row() - b.row()) == 1;
					if (beside && labels.get(a) < labels.get(b)) {
						labels.put(b, labels.get(a));
						changed = true;
					}
				}
			}
		}
		return labels;
	}

	/** Steps to the nearest cell that is not in the block, anywhere on or beside the sheet. */
	private static int depth(CellPlace place, Set<CellPlace> block) {
		int least = Integer.MAX_VALUE;
		for (int column = -1; column <= 9; column++) {
			for (int row = -1; row <= 7; row++) {
				if (!block.contains(new CellPlace(column, row))) {
					least = Math.min(least, Math.abs(column - place.column()) + Math.abs(row - place.row()));
				}
			}
		}
		return least;
	}

	@Test
	void theJobHasOneElementForEachCellApartFromTheOthersAndLabelsForThePen() {
		TestSheet sheet = sheet("pressure=10..30/5", "passes=1,2,3");
		Job job = TestSheetJob.of(sheet, Machine.plain());
		List<Element> elements = Jobs.elements(job);
		assertEquals(16, elements.size());
		assertEquals(OperationKind.DRAW, elements.get(0).getOperations().get(0).getKind());
		assertEquals("harbour-white", job.getLayers().get(0).getStock());
		List<Bounds> boxes = new ArrayList<>();
		Bounds labels = PathData.parse(((Outline) elements.get(0)).getPathData()).bounds();
		assertTrue(labels.minX() >= 0 && labels.minY() >= 0);
		for (Element cell : elements.subList(1, 16)) {
			CellPlace place = sheet.place(cell.getName().substring(0, 2));
			assertEquals(sheet.settings(place).passes(), cell.getOperations().get(0).getPasses());
			assertEquals("blade", cell.getOperations().get(0).getTool());
			assertTrue(cell.getName().contains("pressure " + Sweep.plain(sheet.settings(place).pressure())));
			Bounds box = PathData.parse(((Outline) cell).getPathData()).bounds();
			for (Bounds other : boxes) {
				assertTrue(box.minX() > other.maxX() + 2 || box.maxX() < other.minX() - 2 || box.minY() > other.maxY() + 2
						|| box.maxY() < other.minY() - 2, cell.getName());
			}
			boxes.add(box);
		}
	}

	@Test
	void whatDoesNotFitOrCannotBeSetIsRefused() {
		Machine small = MachineOptions.machine("small", Map.of("width", "80mm", "height", "80mm", "passes-most", "2"));
		assertTrue(refused("pressure=10..30/5", "speed=10,20", small).contains("60"));
		assertTrue(refused("pressure=10.5,11", "speed=10,20", Machine.plain()).contains("10.5"));
		assertTrue(refused("pressure=90..110/10", "speed=10,20", Machine.plain()).contains("110"));
		assertTrue(refused("passes=1,2,3", "speed=10", small).contains("passes 3"));
	}

	private static String refused(String across, String down, Machine machine) {
		return assertThrows(IllegalArgumentException.class, () -> TestSheetJob.of(sheet(across, down), machine))
				.getMessage();
	}

	@Test
	void theChartIsWellFormedAndMarksTheAdvisedCellOnce() throws Exception {
		TestSheet sheet = sheet("pressure=10..30/5", "speed=10,20,30");
		Map<CellPlace, Verdict> verdicts = new TreeMap<>();
		sheet.places().forEach(place -> verdicts.put(place, Verdict.values()[place.column()]));
		TestSheet odd = new TestSheet("a<b&\"c", DAY, sheet.stock(), sheet.setup(), sheet.base(), sheet.across(),
				sheet.down(), 0, new TreeMap<>(verdicts));
		String svg = VerdictChart.svg(odd, Machine.plain());
		Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
				.parse(new InputSource(new StringReader(svg)));
		assertTrue(document.getDocumentElement().getTextContent().contains("a<b&\"c"));
		assertTrue(document.getDocumentElement().getTextContent().contains("2031-05-17"));
		assertEquals(2, svg.split("class=\"advised\"", -1).length - 1, "the cell and the legend");
		assertEquals(svg, VerdictChart.svg(odd, Machine.plain()));
	}
}

package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.Limit;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.studio.Studio;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockLimitsTest {

	@TempDir
	Path folder;

	@BeforeEach
	void studio() {
		Studio.choose(Optional.of(folder));
	}

	@AfterEach
	void usualStudio() {
		Studio.choose(Optional.empty());
	}

	private StockLimits written(String... lines) throws IOException {
		Files.write(folder.resolve("limits.properties"), List.of(lines));
		return StockLimits.ofStudio();
	}

	/** Each bar on the layer of a stock is checked by that stock, whatever the others are of. */
	@ParameterizedTest
	@CsvSource({ "card, 1", "heavy-card, 1.5", "paper, 0.8", "film, 0.5" })
	void layersAreCheckedByTheirOwnStock(String stock, double limit) {
		for (double width : new double[] { limit - 0.05, limit + 0.05 }) {
			Job job = Jobs.create("bars", "Bars");
			for (String each : List.of(stock.equals("film") ? "card" : "film", stock)) {
				Layer layer = Jobs.addLayer(job, each);
				layer.setStock(each);
				Jobs.addOperation(Jobs.addOutline(layer, "M0 0V%sH40V0Z".formatted(each.equals(stock) ? width : 5)),
						OperationKind.CUT);
			}
			List<Finding> thin = Makeready.findings(SampleJobs.prepared(job), LayerLimits.byStock(StockLimits.BUILT_IN),
					Tolerance.DEFAULT, Monitor.NONE).stream().filter(f -> f.id().equals("stroke-too-thin")).toList();
			assertEquals(width < limit ? 1 : 0, thin.size(), () -> thin.toString());
			thin.forEach(finding -> assertEquals(limit, finding.limit().getAsDouble(), 0));
		}
	}

	@Test
	void withoutAFileTheUsualLimitsHold() {
		assertEquals(List.of("card", "heavy-card", "paper", "film"), StockLimits.ofStudio().stocks());
		assertEquals(List.of(), StockLimits.ofStudio().problems());
	}

	@Test
	void studioChangesLimitsAndAddsStocks() throws IOException {
		StockLimits limits = written("# after the test sheet of May", "", "card.thinnest-stroke = 1.2 mm",
				"pearl-300.smallest-hole=1.5mm", "all.sharpest-corner = 25°", "film.sharpest-corner = 15",
				"all.nodes-per-mm = 3 /mm", "card.narrowest-gap = 0.02in");
		assertEquals(List.of(), limits.problems());
		Limits card = limits.limits("card").orElseThrow();
		assertEquals(1.2, card.thinnestStroke());
		assertEquals(25, card.get(Limit.SHARPEST_CORNER));
		assertEquals(0.508, card.get(Limit.NARROWEST_GAP), 1e-12);
		assertEquals(15, limits.limits("film").orElseThrow().get(Limit.SHARPEST_CORNER));
		Limits pearl = limits.limits("pearl-300").orElseThrow();
		assertEquals(1.5, pearl.smallestHole());
		assertEquals(25, pearl.get(Limit.SHARPEST_CORNER));
		assertEquals(3, pearl.get(Limit.NODES_PER_MM));
		assertEquals(Optional.empty(), limits.limits("velvet"));
	}

	/** With the number of the line, and why; the other lines hold. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "card.thinest-stroke = 1mm | thinest-stroke", "card.thinnest-stroke = 1 | length",
			"card.thinnest-stroke = -1mm | -1mm", "card.sharpest-corner = blunt | blunt", "thinnest-stroke = 1mm | form",
			"card thinnest-stroke | form", "card.sharpest-corner = NaN | NaN" })
	void linesThatCannotBeUsedAreTold(String line, String why) throws IOException {
		StockLimits limits = written("card.smallest-piece = 3mm", line);
		assertEquals(1, limits.problems().size(), limits.problems().toString());
		String problem = limits.problems().get(0);
		assertTrue(problem.contains("limits.properties, line 2") && problem.contains(why), problem);
		assertEquals(3, limits.limits("card").orElseThrow().smallestPiece());
		assertEquals(1, limits.limits("card").orElseThrow().thinnestStroke());
		Finding told = Makeready.findings(SampleJobs.prepared(SampleJobs.outline("M0 0V20H20V0Z", OperationKind.CUT)),
				LayerLimits.byStock(limits), Tolerance.DEFAULT, Monitor.NONE).stream()
				.filter(finding -> finding.id().equals("limits-unreadable")).findFirst().orElseThrow();
		assertEquals(problem, told.message());
	}

	@Test
	void fileIsReadAgainOnceItChanges() throws IOException {
		assertEquals(1.2, written("card.thinnest-stroke = 1.2 mm").limits("card").orElseThrow().thinnestStroke());
		assertEquals(1.25, written("card.thinnest-stroke = 1.25 mm").limits("card").orElseThrow().thinnestStroke());
		Files.delete(folder.resolve("limits.properties"));
		assertEquals(1, StockLimits.ofStudio().limits("card").orElseThrow().thinnestStroke());
	}

	@Test
	void valuesOutOfRangeAreRefused() {
		for (Limit limit : Limit.values()) {
			assertThrows(IllegalArgumentException.class, () -> Limits.CARD.with(limit, -1), limit.key());
			assertThrows(IllegalArgumentException.class, () -> Limits.CARD.with(limit, Double.NaN), limit.key());
			assertEquals(limit.most(), Limits.CARD.with(limit, limit.most()).get(limit));
			assertEquals(limit.usual(), Limits.CARD.get(limit));
		}
	}
}

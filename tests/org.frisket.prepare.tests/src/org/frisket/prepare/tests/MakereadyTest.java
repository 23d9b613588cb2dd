package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.Severity;
import org.frisket.prepare.checks.Limits;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;

class MakereadyTest {

	private static List<Finding> findings(Job job, Limits limits) {
		return Makeready.findings(SampleJobs.prepared(job), limits, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static List<Finding> findings(String pathData, OperationKind kind, String id) {
		return findings(SampleJobs.outline(pathData, kind), Limits.CARD).stream().filter(f -> f.id().equals(id))
				.toList();
	}

	@Test
	void openContourToBeCutBlocksWithItsGap() {
		Finding finding = findings("M0 0H30V30H0V3", OperationKind.CUT, "contour-open").get(0);
		assertEquals(Severity.BLOCKING, finding.severity());
		assertEquals(3, finding.measured().getAsDouble(), 1e-9);
		assertEquals(0, finding.place().x(), 1e-9);
		assertEquals(3, finding.place().y(), 1e-9);
		assertEquals("e1", finding.element());
	}

	@Test
	void openContourToBeDrawnIsFine() {
		assertTrue(findings("M0 0H30V30H0V3", OperationKind.DRAW, "contour-open").isEmpty());
	}

	@Test
	void pieceShorterThanTheLimitIsFound() {
		// a square of 1.2 mm beside one of 30 mm
		List<Finding> found = findings("M0 0H30V30H0Z M40 0H41.2V1.2H40Z", OperationKind.CUT, "piece-too-small");
		assertEquals(1, found.size());
		assertEquals(1.2, found.get(0).measured().getAsDouble(), 0.02);
		assertEquals(40.6, found.get(0).place().x(), 0.1);
	}

	@Test
	void neckOfADumbbellIsFoundExactlyWhenTheLimitExceedsIt() {
		// two discs of 10 mm joined by a neck of 1.5 mm
		Job job = SampleJobs.outline("M0 0A10 10 0 1 0 0 1.5H30A10 10 0 1 0 30 0Z", OperationKind.CUT);
		assertEquals(List.of(), thin(job, 1.4));
		List<Finding> found = thin(job, 1.6);
		assertEquals(1, found.size());
		assertEquals(1.5, found.get(0).measured().getAsDouble(), 0.03);
		assertEquals(1.6, found.get(0).limit().getAsDouble(), 0);
		assertEquals(0.75, found.get(0).place().y(), 0.1);
	}

	private static List<Finding> thin(Job job, double limit) {
		return findings(job, Limits.CARD.withThinnestStroke(limit)).stream()
				.filter(f -> f.id().equals("stroke-too-thin")).toList();
	}

	@Test
	void everyFindingHasMessageAndCure() {
		for (Finding finding : findings(SampleJobs.outline("M0 0H30V0.4H0Z M0 9L5 9", OperationKind.CUT), Limits.CARD)) {
			assertTrue(finding.message().endsWith("."), finding.message());
			assertTrue(finding.cure().endsWith("."), finding.cure());
		}
	}

	@Test
	void gravestFindingsComeFirst() {
		List<Severity> order = findings(SampleJobs.outline("M0 0H30V0.4H0Z M0 9L5 9", OperationKind.CUT), Limits.CARD)
				.stream().map(Finding::severity).toList();
		assertEquals(order.stream().sorted().toList(), order);
		assertTrue(order.contains(Severity.BLOCKING) && order.contains(Severity.NOTE));
	}

	@Test
	void checksOfOtherBundlesAreRunToo() {
		long seen = findings(SampleJobs.giftTag(), Limits.CARD).stream().filter(f -> f.id().equals("seen")).count();
		assertEquals(3, seen);
	}

	@Test
	void failingChecksAreReportedByTheirBundleAndTheOthersGoOn() {
		List<String> failures = findings(SampleJobs.giftTag(), Limits.CARD).stream()
				.filter(f -> f.id().equals("check-failed")).map(Finding::message).toList();
		assertEquals(2, failures.size());
		failures.forEach(message -> assertTrue(message.contains("org.frisket.prepare.tests"), message));
		assertTrue(failures.stream().anyMatch(message -> message.contains("the wheels came off")));
	}

	@Test
	void cancelStopsTheChecks() {
		assertThrows(CancellationException.class, () -> Makeready.findings(SampleJobs.prepared(SampleJobs.giftTag()),
				Limits.CARD, Tolerance.DEFAULT, () -> true));
	}

	@Test
	void limitsAreRefusedUnlessPositive() {
		assertThrows(IllegalArgumentException.class, () -> Limits.CARD.withThinnestStroke(0));
		assertThrows(IllegalArgumentException.class, () -> Limits.CARD.withSmallestPiece(Double.NaN));
	}
}

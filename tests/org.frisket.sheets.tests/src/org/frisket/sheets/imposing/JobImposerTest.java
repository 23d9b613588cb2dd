package org.frisket.sheets.imposing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.editing.sheets.LaySheets;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.impose.Turning;
import org.frisket.material.Grain;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.sizes.Format;
import org.frisket.material.sizes.Formats;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.sheets.Shapes;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Jobs on sheets. */
class JobImposerTest {

	private static final LayingChoices A4 = new LayingChoices(210, 297, false, 2, 5, Turning.QUARTER, false, false, 1, 0);

	private final Job job = Shapes.job();

	private static SheetPlan plan(Job host, Map<String, PreparedJob> jobs, LayingChoices choices, Supply supply) {
		return JobImposer.lay(host, jobs, choices, supply, Budget.steps(4_000, choices.seed()), better -> {
		}, Tolerance.DEFAULT, Monitor.NONE);
	}

	private SheetPlan plan(LayingChoices choices) {
		return plan(job, Shapes.alone(job), choices, Supply.NONE);
	}

	private static List<LaidSheet> lay(Job host, Map<String, PreparedJob> jobs, SheetPlan plan, LayingChoices choices) {
		new LaySheets(host, plan.toSheets(), List.of(), choices.toLaying()).apply();
		return LaidSheets.of(host, jobs, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static Map<String, PreparedJob> jobs(Job host, Job... guests) {
		Map<String, PreparedJob> jobs = new LinkedHashMap<>();
		jobs.put(host.getId(), SampleJobs.prepared(host));
		for (int i = 0; i < guests.length; i++) {
			jobs.put("guest-" + (i + 1), SampleJobs.prepared(guests[i]));
		}
		return jobs;
	}

	/** JTS measures what lies on the sheets on its own. */
	private static void assertSound(List<LaidSheet> sheets) {
		for (LaidSheet laid : sheets) {
			assertEquals(List.of(), laid.findings());
			assertEquals(List.of(), laid.missing());
			List<Geometry> lying = new ArrayList<>();
			double margin = laid.sheet().getMargin() - 1e-3;
			for (LaidPart part : laid.parts()) {
				Geometry each = Polygons.of(part.room(), 0.001);
				var box = each.getEnvelopeInternal();
				assertTrue(box.getMinX() >= margin && box.getMinY() >= margin
						&& box.getMaxX() <= laid.sheet().getWidth() - margin
						&& box.getMaxY() <= laid.sheet().getHeight() - margin, () -> box + " on " + laid.sheet());
				lying.forEach(other -> assertTrue(each.distance(other) >= laid.sheet().getGap() - 5e-3));
				lying.add(each);
			}
		}
	}

	/** 304.8 mm less margins of 10 are 284.8; with gaps of 3, squares of 50 go floor(287.8 / 53) = 5 times each way. */
	@Test
	void twentyFiveSquaresOnTwelveInches() {
		Shapes.cut(job, 0, 0, 50, 50);
		job.setQuantity(25);
		LayingChoices choices = new LayingChoices(304.8, 304.8, false, 3, 10, Turning.NONE, false, false, 1, 0);
		SheetPlan plan = plan(choices);
		assertEquals(1, plan.sheets().size());
		assertEquals(25, plan.parts());
		assertSound(lay(job, Shapes.alone(job), plan, choices));
		assertEquals(25, job.getSheets().get(0).getPlacements().stream().map(Placement::getCopy).distinct().count());
		job.setQuantity(26);
		assertEquals(2, plan(choices).sheets().size());
	}

	@Test
	void letteringMatsAndTagsLieSoundly() {
		Job letters = SampleJobs.giftTag();
		Layer tags = Jobs.addLayer(letters, "Tags");
		Shapes.add(tags, OperationKind.CUT, "M0 100h60l10 15l-10 15h-60z");
		Shapes.add(tags, OperationKind.CUT, Shapes.disc(60, 115, 2.5));
		Shapes.add(tags, OperationKind.CREASE, "M20 100v30");
		letters.setQuantity(2);
		Map<String, PreparedJob> jobs = Shapes.alone(letters);
		for (LayingChoices choices : List.of(A4, new LayingChoices(210, 297, false, 2, 5, Turning.FREE, true, false, 1, 0))) {
			SheetPlan plan = plan(letters, jobs, choices, Supply.NONE);
			assertEquals(List.of(), plan.left());
			List<LaidSheet> sheets = lay(letters, jobs, plan, choices);
			assertSound(sheets);
			double cut = jobs.get(letters.getId()).layers().stream().flatMap(layer -> layer.shown().stream())
					.filter(element -> !element.element().getId().equals(tags.getElements().get(1).getId()))
					.mapToDouble(element -> element.region().area()).sum();
			assertEquals(2 * cut, sheets.stream().mapToDouble(LaidSheet::partsArea).sum(), 1e-3);
		}
	}

	@Test
	void stepsAndSeedDecideEverything() throws Exception {
		Shapes.add(Shapes.card(job), OperationKind.CUT, "M0 0L60 20L10 70Z");
		Shapes.add(Shapes.card(job), OperationKind.CUT, Shapes.disc(200, 0, 17));
		Layer film = Jobs.addLayer(job, "Film");
		film.setColour("#1d6f78");
		Shapes.add(film, OperationKind.CUT, Shapes.box(0, 0, 30, 70));
		job.setQuantity(9);
		byte[] before = JobFile.toBytes(job);
		List<String> files = new ArrayList<>();
		for (int i = 0; i < 2; i++) {
			Job each = JobFile.load(before, "tags");
			lay(each, Shapes.alone(each), plan(each, Shapes.alone(each), A4, Supply.NONE), A4);
			files.add(new String(JobFile.toBytes(each), "UTF-8"));
		}
		assertEquals(files.get(0), files.get(1));
		assertEquals(2, JobFile.load(files.get(0).getBytes("UTF-8"), "tags").getSheets().stream().map(Sheet::getColour)
				.distinct().count());
	}

	@Test
	void whatIsDueEarlierComesOnEarlierSheets() {
		Shapes.cut(job, 0, 0, 90, 130);
		job.setQuantity(4);
		job.setDue(LocalDate.of(2031, 5, 17));
		Job sooner = Shapes.job();
		Shapes.cut(sooner, 0, 0, 80, 120);
		sooner.setQuantity(4);
		sooner.setDue(LocalDate.of(2031, 5, 2));
		SheetPlan plan = plan(job, jobs(job, sooner), A4, Supply.NONE);
		assertEquals(2, plan.sheets().size());
		assertTrue(plan.sheets().get(0).parts().stream().allMatch(part -> "guest-1".equals(part.job())));
		assertTrue(plan.sheets().get(1).parts().stream().allMatch(part -> part.job() == null));
	}

	@Test
	void jobsShareSheetsUnlessTheyMayNot() {
		Shapes.cut(job, 0, 0, 40, 40);
		Job other = Shapes.job();
		Shapes.cut(other, 0, 0, 50, 50);
		assertEquals(1, plan(job, jobs(job, other), A4, Supply.NONE).sheets().size());
		LayingChoices byJob = new LayingChoices(210, 297, false, 2, 5, Turning.QUARTER, false, true, 1, 0);
		assertEquals(2, plan(job, jobs(job, other), byJob, Supply.NONE).sheets().size());
	}

	@Test
	void whatIsPinnedStays() {
		Shapes.cut(job, 0, 0, 60, 60);
		job.setQuantity(6);
		Sheet sheet = Jobs.addSheet(job, null, 210, 297);
		sheet.setName("First");
		sheet.setMargin(5);
		sheet.setGap(2);
		Placement pinned = Jobs.addPlacement(sheet, "e1", 105, 150, 15);
		pinned.setCopy(2);
		pinned.setPinned(true);
		Jobs.addPlacement(sheet, "e1", 50, 50, 0);
		SheetPlan plan = plan(A4);
		assertEquals(6, plan.parts());
		List<LaidSheet> sheets = lay(job, Shapes.alone(job), plan, A4);
		assertSound(sheets);
		assertEquals("First", sheets.get(0).sheet().getName());
		assertEquals(sheet.getId(), sheets.get(0).sheet().getId());
		List<Placement> there = sheets.get(0).sheet().getPlacements().stream().filter(Placement::isPinned).toList();
		assertEquals(1, there.size());
		assertEquals("105.0 150.0 15.0 2", there.get(0).getX() + " " + there.get(0).getY() + " " + there.get(0).getTurn() + " "
				+ there.get(0).getCopy());
		assertEquals(6, sheets.stream().flatMap(each -> each.sheet().getPlacements().stream()).map(Placement::getCopy)
				.distinct().count());
	}

	private static Stock stock(String id, Grain grain, String... sizes) {
		List<Format> formats = new ArrayList<>();
		for (String size : sizes) {
			formats.add(Formats.parse(size));
		}
		return Stock.named(id).id(id).family(StockFamily.PAPER).grammage(new BigDecimal(200)).sizes(formats).grain(grain).build();
	}

	@Test
	void theShelfSaysSizeAndGrainAndLeftoversComeFirst() {
		Shapes.card(job).setStock("shore");
		Shapes.cut(job, 0, 0, 20, 100);
		job.setQuantity(6);
		Supply supply = Supply.of(Map.of("shore", stock("shore", Grain.LONG, "200x150mm", "A4")),
				List.of(new Leftover("leftover-7", "shore", null, 60, 115), new Leftover("leftover-8", "other", null, 60, 115),
						new Leftover("leftover-9", "shore", null, 9, 115)));
		LayingChoices choices = new LayingChoices(0, 0, false, 2, 5, Turning.FREE, false, false, 1, 0);
		SheetPlan plan = plan(job, Shapes.alone(job), choices, supply);
		assertEquals("leftover-7", plan.sheets().get(0).leftover());
		assertEquals(2, plan.sheets().get(0).parts().size());
		assertNull(plan.sheets().get(1).leftover());
		assertEquals(200, plan.sheets().get(1).width());
		assertEquals(150, plan.sheets().get(1).height());
		plan.sheets().forEach(sheet -> sheet.parts().forEach(part -> assertEquals(0, part.turn() % 180)));
		assertSound(lay(job, Shapes.alone(job), plan, choices));
	}

	@Test
	void leftoversThatAreTooSmallAreNoHindrance() {
		Shapes.cut(job, 0, 0, 100, 100);
		List<Leftover> small = new ArrayList<>();
		for (int i = 1; i <= 3; i++) {
			small.add(new Leftover("leftover-" + i, null, null, 80, 80));
		}
		SheetPlan plan = plan(job, Shapes.alone(job), A4, Supply.of(Map.of(), small));
		assertEquals(List.of(), plan.left());
		assertEquals(1, plan.sheets().size());
		assertNull(plan.sheets().get(0).leftover());
	}

	@Test
	void aRollIsAsLongAsItIsUsed() {
		Shapes.card(job).setStock("film");
		Shapes.cut(job, 0, 0, 40, 90);
		job.setQuantity(5);
		LayingChoices choices = new LayingChoices(0, 0, true, 2, 5, Turning.NONE, false, false, 1, 0);
		SheetPlan plan = plan(job, Shapes.alone(job), choices,
				Supply.of(Map.of("film", stock("film", Grain.UNKNOWN, "roll 100mm")), List.of()));
		assertEquals(1, plan.sheets().size());
		assertEquals(5 * 40 + 4 * 2 + 10, plan.sheets().get(0).width(), 0.01);
		assertEquals(100, plan.sheets().get(0).height());
		assertTrue(plan.sheets().get(0).roll());
		assertSound(lay(job, Shapes.alone(job), plan, choices));
	}

	@Test
	void whatIsTooLargeOrTooManyIsLeftAndNamed() {
		Shapes.cut(job, 0, 0, 250, 300).setName("Banner");
		Shapes.cut(job, 400, 0, 100, 100);
		NoRoom banner = plan(A4).left().get(0);
		assertEquals("Banner", banner.part().title());
		assertTrue(banner.tooLarge());
		assertTrue(banner.message().contains("Banner") && banner.message().contains("300") && banner.message().contains("297"),
				banner.message());
		job.getLayers().get(0).getElements().remove(0);
		job.setQuantity(4);
		NoRoom few = plan(new LayingChoices(210, 297, false, 2, 5, Turning.NONE, false, false, 1, 1)).left().get(0);
		assertEquals(2, few.quantity());
		assertEquals(false, few.tooLarge());
	}

	@Test
	void whatCannotBeIsSaid() {
		Shapes.cut(job, 0, 0, 20, 20);
		String margins = assertThrows(IllegalArgumentException.class,
				() -> plan(new LayingChoices(100, 100, false, 2, 50, Turning.NONE, false, false, 1, 0))).getMessage();
		assertTrue(margins.contains("50 mm") && margins.contains("100"), margins);
		assertThrows(IllegalArgumentException.class,
				() -> plan(new LayingChoices(0, 0, true, 2, 5, Turning.NONE, false, false, 1, 0)));
		assertThrows(IllegalArgumentException.class,
				() -> new LayingChoices(100, 100, false, -1, 5, Turning.NONE, false, false, 1, 0));
		job.setQuantity(JobImposer.MOST_PARTS + 1);
		assertThrows(IllegalArgumentException.class, () -> plan(A4));
	}

	@Test
	void noGapAndNothingToLayWork() {
		assertEquals(List.of(), plan(A4).sheets());
		Shapes.cut(job, 0, 0, 100, 100);
		job.setQuantity(4);
		LayingChoices tight = new LayingChoices(200, 200, false, 0, 0, Turning.NONE, false, false, 1, 0);
		SheetPlan plan = plan(tight);
		assertEquals(1, plan.sheets().size());
		assertEquals(1, plan.utilisation(), 1e-9);
		assertSound(lay(job, Shapes.alone(job), plan, tight));
	}

	@Test
	void everyStockIsThereInTheFirstPlanAndPlansOnlyGetBetter() {
		Shapes.add(Shapes.card(job), OperationKind.CUT, "M0 0L60 20L10 70Z");
		Layer film = Jobs.addLayer(job, "Film");
		film.setStock("film");
		Shapes.add(film, OperationKind.CUT, "M0 0L50 20L40 70Z");
		job.setQuantity(20);
		List<SheetPlan> told = new ArrayList<>();
		SheetPlan last = JobImposer.lay(job, Shapes.alone(job), A4, Supply.NONE, Budget.steps(100_000, 1), told::add,
				Tolerance.DEFAULT, Monitor.NONE);
		told.forEach(plan -> assertEquals(40, plan.parts()));
		assertTrue(told.size() > 1);
		for (int i = 1; i < told.size(); i++) {
			assertTrue(told.get(i).sheets().size() <= told.get(i - 1).sheets().size());
		}
		assertEquals(told.get(told.size() - 1).sheets().size(), last.sheets().size());
		// cancelled as soon as there is something, that is what is returned
		SheetPlan[] first = new SheetPlan[1];
		SheetPlan stopped = JobImposer.lay(job, Shapes.alone(job), A4, Supply.NONE, Budget.seconds(600, 1),
				plan -> first[0] = plan, Tolerance.DEFAULT, () -> first[0] != null);
		assertEquals(40, stopped.parts());
	}
}

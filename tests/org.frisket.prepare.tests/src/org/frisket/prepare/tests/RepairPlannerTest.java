package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.Edit;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Length;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.prepare.OwnPath;
import org.frisket.prepare.repair.OutlineRepair;
import org.frisket.prepare.repair.PlannedRepair;
import org.frisket.prepare.repair.RepairPlan;
import org.frisket.prepare.repair.RepairPlanner;
import org.frisket.prepare.repair.RepairWords;
import org.frisket.prepare.repair.StepChoice;
import org.frisket.testkit.IndependentArea;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is planned for outlines, beside what comes of it. */
class RepairPlannerTest {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;
	/** Two plates that overlap, a line twice, a speck, and a frame that is open by half the tolerance. */
	private static final String BROKEN = "M10 10V30H50V10Z M40 20V40H70V20Z M20 60H60 M60 60H20 M90 20v.05h.05v-.05z "
			+ "M80 60V80H110V60H80.01";
	/** By hand: 40 × 20 and 30 × 20 that share 10 × 10, and 30 × 20. */
	private static final double AREA = 800 + 600 - 100 + 600;
	private static final int SHAPES = 150;

	private static RepairPlan plan(Job job) throws Exception {
		return plan(job, StepChoice.recommended());
	}

	private static RepairPlan plan(Job job, List<StepChoice> steps) throws Exception {
		return new RepairPlanner(steps, TOLERANCE).plan(RepairPlanner.outlines(job, List.of()), Monitor.NONE);
	}

	private static List<StepChoice> steps(Predicate<String> wanted) {
		return StepChoice.recommended().stream()
				.filter(step -> wanted.test(step.step().id().replace("org.frisket.geometry.", ""))).toList();
	}

	private static List<String> kinds(RepairPlan plan) {
		return plan.repairs().stream().map(repair -> repair.mend().kind()).sorted().toList();
	}

	private static Outline outline(Job job) {
		return (Outline) Jobs.elements(job).get(0);
	}

	private static List<Contour> inJob(Outline outline) {
		return PathData.parse(outline.getPathData()).transformed(OwnPath.placement(outline)).contours();
	}

	private static double filled(Outline outline) {
		return IndependentArea.nonZero(inJob(outline).stream().filter(Contour::isClosed).toList());
	}

	private static String bytes(Job job) throws Exception {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	private static void apply(RepairPlan plan, Job job) {
		plan.edit(job).orElseThrow().apply();
	}

	@Test
	void everyRepairHasItsStepPlaceAndAmount() throws Exception {
		RepairPlan plan = plan(SampleJobs.outline(BROKEN, OperationKind.CUT));
		assertEquals(List.of("contour-closed", "crossing-resolved", "crossing-resolved", "doubled-line-removed",
				"speck-removed"), kinds(plan));
		for (PlannedRepair repair : plan.repairs()) {
			assertFalse(repair.step().isBlank());
			assertFalse(RepairWords.of(repair.mend().kind()).contains("-"), repair.mend().kind());
		}
		PlannedRepair doubled = of(plan, "doubled-line-removed");
		assertEquals("Remove doubled lines", doubled.step());
		assertEquals(40, doubled.mend().amount(), 1e-9);
		assertEquals(0, doubled.mend().place().distance(new Point(40, 60)), 1e-6);
		PlannedRepair closed = of(plan, "contour-closed");
		assertEquals("Close contours", closed.step());
		assertEquals(0.01, closed.mend().amount(), 1e-9);
		assertEquals("Remove specks and spikes", of(plan, "speck-removed").step());
		assertEquals(0, of(plan, "speck-removed").mend().place().distance(new Point(90.025, 20.025)), 0.01);
		List<Point> crossings = plan.repairs().stream().filter(r -> r.mend().kind().equals("crossing-resolved"))
				.map(r -> r.mend().place()).toList();
		assertTrue(crossings.stream().anyMatch(place -> place.distance(new Point(50, 20)) < 0.02), crossings.toString());
		assertTrue(crossings.stream().anyMatch(place -> place.distance(new Point(40, 30)) < 0.02), crossings.toString());
	}

	@Test
	void repairsHaveWordsInGermanToo() {
		ResourceBundle german = ResourceBundle.getBundle("org.frisket.prepare.repair.messages", Locale.GERMAN,
				RepairPlan.class.getClassLoader());
		assertEquals("Doppelte Linie entfernt", german.getString("RepairWords_doubledLineRemoved"));
		assertEquals("Kreuzung aufgelöst", german.getString("RepairWords_crossingResolved"));
		assertEquals("Polished edge", RepairWords.of("polished-edge"), "of a studio's own step");
	}

	private static PlannedRepair of(RepairPlan plan, String kind) {
		return plan.repairs().stream().filter(repair -> repair.mend().kind().equals(kind)).findFirst().orElseThrow();
	}

	@Test
	void oneEditRepairsAndItsUndoLeadsBackToTheFirstBytes() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		String before = bytes(job);
		RepairPlan plan = plan(job);
		assertEquals(before, bytes(job), "a plan changes nothing");
		Edit edit = plan.edit(job).orElseThrow();
		assertEquals("Repair outline", edit.name());
		edit.apply();
		assertEquals(AREA, filled(outline(job)), 0.02 * 300);
		assertEquals(1, inJob(outline(job)).stream().filter(line -> !line.isClosed()).count());
		String after = bytes(job);
		assertTrue(plan(job).isEmpty(), "nothing is left to do");
		edit.undo();
		assertEquals(before, bytes(job));
		edit.redo();
		assertEquals(after, bytes(job));
	}

	@Test
	void proofSaysHowFarAnythingMoves() throws Exception {
		RepairPlan plan = plan(SampleJobs.outline(BROKEN, OperationKind.CUT));
		assertTrue(plan.isWithinTolerance());
		assertTrue(plan.movement() <= TOLERANCE.mm(), "" + plan.movement());
		assertTrue(plan.proof(mm -> Length.text(mm, 4)).contains("0.02 mm are allowed"),
				plan.proof(mm -> Length.text(mm, 4)));
	}

	/** As cut: a gap of 0.01 in an outline that is shown ten times as large is one of 0.1 mm and stays open. */
	@Test
	void repairGoesByMillimetresAsCut() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		outline(job).setTransform(new Matrix(0, 10, -10, 0, 300, 20));
		RepairPlan plan = plan(job);
		assertEquals(List.of("crossing-resolved", "crossing-resolved", "doubled-line-removed"), kinds(plan));
		Point place = of(plan, "doubled-line-removed").mend().place();
		assertEquals(0, place.distance(new Point(300 - 600, 20 + 400)), 1e-6);
		apply(plan, job);
		assertEquals(100 * 1300 + 0.25, filled(outline(job)), 0.02 * 2000);
		assertTrue(plan(job).isEmpty());
	}

	@Test
	void singleStepDoesNothingElse() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		RepairPlan plan = plan(job, steps("doubled"::equals));
		assertEquals(List.of("doubled-line-removed"), kinds(plan));
		apply(plan, job);
		assertEquals(PathData.parse(BROKEN).contours().size() - 1, inJob(outline(job)).size());
	}

	@Test
	void optionOfAStepCounts() throws Exception {
		Job job = SampleJobs.outline("M0 0H30V20H0V1", OperationKind.CUT);
		assertTrue(plan(job).isEmpty());
		List<StepChoice> wide = StepChoice.recommended().stream().map(step -> step.step().id().endsWith(".close")
				? new StepChoice(step.step(), Map.of("reach", "1.5mm")) : step).toList();
		RepairPlan plan = plan(job, wide);
		assertEquals(List.of("contour-closed"), kinds(plan));
		apply(plan, job);
		assertEquals(600, filled(outline(job)), 1);
		List<StepChoice> wrong = List.of(new StepChoice(wide.get(0).step(), Map.of("polish", "yes")));
		Job fresh = SampleJobs.outline(BROKEN, OperationKind.CUT);
		assertTrue(assertThrows(IllegalArgumentException.class, () -> plan(fresh, wrong)).getMessage().contains("polish"));
	}

	/** A slit that is closed inside a plate is cut, as it was meant to, and not swallowed. */
	@ParameterizedTest
	@EnumSource(names = { "CUT", "KISS_CUT", "PRINT" })
	void lineThatIsClosedInsideAnAreaBecomesAHole(OperationKind kind) throws Exception {
		for (String slit : List.of("M10 10H20V20H10V10.01", "M10 10V20H20V10H10.01")) {
			for (String plate : List.of("M0 0H50V30H0Z", "M0 0V30H50V0Z")) {
				Job job = SampleJobs.outline(plate + slit, kind);
				apply(plan(job), job);
				assertEquals(1500 - 100, filled(outline(job)), 1, plate + slit);
				assertTrue(plan(job).isEmpty(), plate + slit);
			}
		}
	}

	/** What a pen draws stays lines, be they closed and within each other. */
	@ParameterizedTest
	@EnumSource(names = { "DRAW", "CREASE", "PERFORATE" })
	void drawnLinesStayLines(OperationKind kind) throws Exception {
		Job job = SampleJobs.outline("M0 0H50V30H0Z M10 10H40V20H10V10.01 M0 0H50V30H0Z M5 5H9", kind);
		RepairPlan plan = plan(job);
		assertEquals(List.of("contour-closed", "doubled-line-removed"), kinds(plan));
		apply(plan, job);
		assertEquals(3, inJob(outline(job)).size());
		assertEquals(2, inJob(outline(job)).stream().filter(Contour::isClosed).count());
		assertTrue(plan(job).isEmpty());
	}

	@Test
	void whatCannotBeRepairedIsNamedAndStays() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		Outline unreadable = Jobs.addOutline(job.getLayers().get(0), "M0 0 L oops");
		Outline flat = Jobs.addOutline(job.getLayers().get(0), "M0 0H5V5Z");
		flat.setTransform(new Matrix(1, 0, 0, 0, 0, 0));
		Outline speck = Jobs.addOutline(job.getLayers().get(0), "M0 0h.05v.05h-.05z");
		Jobs.addOutline(job.getLayers().get(0), "");
		RepairPlan plan = plan(job);
		assertEquals(List.of(unreadable.getId(), flat.getId(), speck.getId()),
				plan.untouched().stream().map(each -> each.element()).toList());
		assertTrue(plan.untouched().get(0).reason().contains("character 7"), plan.untouched().get(0).reason());
		assertEquals(1, plan.outlines().size());
	}

	@Test
	void selectionLocksAndHidingSayWhichOutlines() {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		Outline second = Jobs.addOutline(job.getLayers().get(0), BROKEN);
		Outline third = Jobs.addOutline(job.getLayers().get(0), BROKEN);
		assertEquals(3, RepairPlanner.outlines(job, List.of()).size());
		assertEquals(List.of(second), RepairPlanner.outlines(job, List.of(second)));
		second.setLocked(true);
		third.setVisible(false);
		assertEquals(List.of(outline(job)), RepairPlanner.outlines(job, List.of()));
		assertEquals(List.of(), RepairPlanner.outlines(job, List.of(second, third)));
		assertEquals(List.of(), RepairPlanner.outlines(Jobs.create("empty", "Empty"), List.of()));
	}

	@Test
	void planThatIsOutdatedCannotBeApplied() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		RepairPlan plan = plan(EcoreUtil.copy(job));
		assertTrue(plan.edit(job).isPresent(), "made of a copy, it is for the job");
		outline(job).setPathData("M0 0H5V5Z");
		assertTrue(plan.edit(job).isEmpty());
	}

	@Test
	void cancelStopsItAndProgressRises() throws Exception {
		Job job = SampleJobs.outline(BROKEN, OperationKind.CUT);
		Jobs.addOutline(job.getLayers().get(0), BROKEN);
		List<Outline> outlines = RepairPlanner.outlines(job, List.of());
		RepairPlanner planner = new RepairPlanner(StepChoice.recommended(), TOLERANCE);
		List<Double> told = new ArrayList<>();
		Monitor half = new Monitor() {
			@Override
			public boolean isCancelled() {
				return !told.isEmpty() && told.get(told.size() - 1) >= 0.5;
			}

			@Override
			public void worked(double fraction) {
				told.add(fraction);
			}
		};
		assertThrows(CancellationException.class, () -> planner.plan(outlines, half));
		assertEquals(told.stream().sorted().toList(), told);
		assertTrue(told.get(told.size() - 1) < 0.75, told.toString());
	}

	/** Of random shapes, some turned, stretched and torn open: area by the JDK's geometry, movement, and a second run. */
	@Test
	void randomShapesKeepTheirAreaMoveNoFurtherAndAreDoneAfterOneRun() throws Exception {
		Random random = new Random(7);
		int repaired = 0;
		for (int i = 0; i < SHAPES; i++) {
			String data = shapes(random);
			Job job = SampleJobs.outline(data, OperationKind.CUT);
			Transform turn = Transform.rotation(random.nextDouble() * 6).then(Transform.scaling(1 + random.nextDouble(), 1));
			outline(job).setTransform(new Matrix(turn.a(), turn.b(), turn.c(), turn.d(), 30, -7));
			double area = filled(outline(job));
			double length = inJob(outline(job)).stream().mapToDouble(Contour::length).sum();
			RepairPlan plan = plan(job);
			assertTrue(plan.isWithinTolerance(), data);
			if (plan.isEmpty()) {
				continue;
			}
			repaired++;
			apply(plan, job);
			assertEquals(area, filled(outline(job)), TOLERANCE.mm() * length, data);
			OutlineRepair first = plan.outlines().get(0);
			RepairPlan again = plan(job);
			assertTrue(again.isEmpty(), () -> told(data, first, again));
		}
		assertTrue(repaired > SHAPES / 2, "" + repaired);
	}

	private static String told(String data, OutlineRepair first, RepairPlan again) {
		return data + "\n" + first.after() + "\n" + again.outlines().get(0).after() + "\n" + kinds(again);
	}

	private static String shapes(Random random) {
		StringBuilder data = new StringBuilder();
		for (int i = 1 + random.nextInt(4); i > 0; i--) {
			double x = random.nextInt(40);
			double y = random.nextInt(40);
			double w = 3 + 20 * random.nextDouble();
			double h = 3 + 20 * random.nextDouble();
			data.append(switch (random.nextInt(3)) {
			case 0 -> String.format(Locale.ROOT, "M%f %fh%fv%fh%fz ", x, y, w, h, -w);
			case 1 -> String.format(Locale.ROOT, "M%f %fc%f %f %f %f %f %fz ", x, y, w, -h, w, h, 0.0, h);
			default -> String.format(Locale.ROOT, "M%f %fl%f %fl%f %fl%f %fz ", x, y, w, h, -w, 0.3, w, -h);
			});
		}
		return data.toString();
	}
}

package org.frisket.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Point;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.Timeline;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunMakerTest {

	private static final Tool BLADE = ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("name", "Harbour blade", "offset", "0.3mm"));
	private static final Tool PEN = ToolOptions.tool(ToolKind.PEN, "p1", Map.of());
	private static final Tool WHEEL = ToolOptions.tool(ToolKind.CREASING_WHEEL, "w1", Map.of());
	private static final StockFacts WHITE = StockFacts.of(Runs.white());
	private static final Settings PROVEN = new Settings(0.45, 20, 70, 2);
	private static final Settings TRIED = new Settings(0.4, 14, 50, 1);

	private static Run ran(int number, String job, StockFacts stock, Settings settings) {
		return new Run("run-" + number, Instant.parse("2031-05-17T09:30:00Z").plusSeconds(number), job, stock,
				new Setup("harbour", "b1", OperationKind.CUT), settings, Verdict.THROUGH, 3, "");
	}

	private static Trial trial() {
		return new Trial("trial-1", LocalDate.of(2031, 5, 17), WHITE, new Setup("harbour", "b1", OperationKind.CUT), TRIED,
				Verdict.THROUGH, 0, "");
	}

	private static LegWork work(List<Trial> trials, List<Run> runs, Stock... stocks) {
		Job job = Runs.squares("Tags", 1, OperationKind.CUT);
		job.setId("job-7");
		return Runs.run(job, Runs.workshop(Runs.harbour(), List.of(BLADE), trials, runs, stocks)).work().get(0);
	}

	@Test
	void stagesComeInTheirOrderEachWithItsTool() {
		Job job = Runs.squares("Cards", 2, OperationKind.CUT, OperationKind.DRAW, OperationKind.CREASE);
		MachineRun run = Runs.run(job, Runs.workshop(BLADE, PEN, WHEEL));
		assertEquals(List.of(Stage.DRAW, Stage.CREASE, Stage.CUT), run.run().legs().stream().map(leg -> leg.stage()).toList());
		assertEquals(List.of(PEN, WHEEL, BLADE), run.work().stream().map(LegWork::tool).toList());
		assertEquals(List.of("p1", "w1", "b1"), run.run().legs().stream().map(leg -> leg.tool()).toList());
		run.run().legs().forEach(leg -> assertEquals(2, leg.strokes().size()));
		assertEquals("p1", run.run().legs().get(0).strokes().get(0).line().tool());
		assertEquals(2 * 30, run.timeline().seconds(Timeline.Kind.STOP), 1e-9);
		assertEquals(6 * 0.1, run.timeline().seconds(Timeline.Kind.LIFT), 1e-9);
		assertEquals(List.of(), run.findings());
	}

	/** Trapezoids of motion: D / v + v / a from rest, or 2 √(D / a) where the speed is not reached (kinematics). */
	@ParameterizedTest
	@CsvSource({ "h50, 100, 0.6", "h10, 100, 0.2", "h4, 100, 0.126491",
			// three sides of a square with corners at v = √(a δ sin 45° / (1 - sin 45°)) = 6.948688 mm/s
			"h10v10h-10, 50, 0.724136" })
	void strokesTakeTheTimeOfTheirDistances(String path, double speed, double seconds) {
		Job job = SampleJobs.outline("M0 0" + path, OperationKind.DRAW);
		Machine machine = Runs.harbour(Map.of("acceleration", "1000", "corner-deviation", "0.02mm"));
		Settings settings = new Settings(0, 10, speed, 1);
		Run before = new Run("run-1", Instant.EPOCH, job.getId(), StockFacts.of(StockFamily.CARD, 0, 0),
				new Setup("harbour", "p1", OperationKind.DRAW), settings, Verdict.THROUGH, 1, "");
		MachineRun run = Runs.run(job, Runs.workshop(machine, List.of(PEN), List.of(), List.of(before)));
		assertEquals(settings, run.work().get(0).settings());
		assertEquals(seconds, run.timeline().seconds(Timeline.Kind.STROKE), 1e-6);
	}

	@Test
	void travelBeginsInTheCornerThatIsZero() {
		Machine machine = Runs.harbour(Map.of("acceleration", "4000", "travel-speed", "400", "origin", "upper-left", "margin-left",
				"0mm", "margin-top", "0mm", "margin-right", "0mm"));
		Job job = Runs.squares("Tags", 1, OperationKind.CUT);
		Runs.lay(Runs.sheet(job, 330, 200), job, null, 310, 10);
		MachineRun run = RunMaker.of(Load.of(Runs.laid(job)),
				Runs.workshop(machine, List.of(ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("offset", "0mm"))), List.of(),
						List.of(), Runs.white()),
				RunChoices.plain(), () -> false);
		assertEquals(new Point(0, 0), run.carriage().home());
		Stroke first = run.run().legs().get(0).strokes().get(0);
		double way = Math.hypot(first.start().x(), first.start().y());
		assertTrue(way >= 300 && way < 331, "from " + first.start());
		assertEquals(way / 400 + 400.0 / 4000, run.timeline().spans().get(0).seconds(), 1e-9);
	}

	@Test
	void whatWorkedForTheJobComesBeforeTrialsAndTheyBeforeRules() {
		assertEquals(LegWork.Basis.RULES, work(List.of(), List.of(), Runs.white()).basis());
		LegWork tried = work(List.of(trial()), List.of(), Runs.white());
		assertEquals(LegWork.Basis.TRIALS, tried.basis());
		assertEquals(14, tried.settings().pressure());
		LegWork proven = work(List.of(trial()), List.of(ran(1, "job-7", WHITE, PROVEN)), Runs.white());
		assertEquals(LegWork.Basis.RUN, proven.basis());
		assertEquals(PROVEN, proven.settings());
		assertTrue(proven.reasons().get(0).contains("same job"), proven.reasons().toString());
		Settings other = new Settings(0.4, 9, 40, 1);
		assertEquals(PROVEN, work(List.of(), List.of(ran(1, "job-7", WHITE, PROVEN), ran(2, "job-8", WHITE, other)), Runs.white())
				.settings(), "the same job's come first, though it is older");
		assertEquals(other, work(List.of(trial()), List.of(ran(2, "job-8", WHITE, other)), Runs.white()).settings());
	}

	@Test
	void runsOfOtherStockGiveWayToTrialsAndOtherFamiliesSayNothing() {
		StockFacts cream = new StockFacts("harbour-cream", StockFamily.CARD, 216, 0.3, 1);
		Run elsewhere = ran(1, "job-7", cream, PROVEN);
		assertEquals(LegWork.Basis.TRIALS, work(List.of(trial()), List.of(elsewhere), Runs.white()).basis());
		assertEquals(PROVEN, work(List.of(), List.of(elsewhere), Runs.white()).settings());
		Run film = ran(1, "job-7", new StockFacts("harbour-film", StockFamily.FILM, 0, 0.1, 1), PROVEN);
		assertEquals(LegWork.Basis.RULES, work(List.of(), List.of(film), Runs.white()).basis());
		// two stocks that nobody knows are not the same
		Run unknown = ran(1, "job-8", StockFacts.of(StockFamily.CARD, 0, 0), PROVEN);
		assertEquals(LegWork.Basis.RULES, work(List.of(), List.of(unknown)).basis());
	}

	@Test
	void passesOfTheJobComeBeforeThoseOfTheSettings() {
		Stock heavy = Runs.white().change().grammage(new BigDecimal(350)).build();
		Workshop workshop = Runs.workshop(Runs.harbour(), List.of(BLADE), List.of(), List.of(), heavy);
		Job job = Runs.squares("Tags", 2, OperationKind.CUT);
		MachineRun run = Runs.run(job, workshop);
		assertEquals(2 * 3, run.run().strokes().count(), "three passes above 300 g/m², by the rule of thumb");
		Runs.operation(job, 0, 0).setPasses(5);
		run = Runs.run(job, workshop);
		assertEquals(5 + 3, run.run().strokes().count());
		assertEquals(5, run.work().get(0).settings().passes());
	}

	@Test
	void speedIsWhatTheSettingMeansElseAShareOfTravel() {
		Job job = Runs.squares("Tags", 1, OperationKind.CUT);
		// 30 % of 10 to 110 mm/s, by the rule of thumb
		assertEquals(40, fastest(Runs.run(job, Runs.workshop(BLADE))), 1e-9);
		Machine unknown = Runs.harbour(Map.of("speed-least-means", "0", "speed-most-means", "0", "travel-speed", "200"));
		MachineRun run = Runs.run(job, Runs.workshop(unknown, List.of(BLADE), List.of(), List.of(), Runs.white()));
		assertEquals(60, fastest(run), 1e-9);
		assertEquals(List.of("run-speed-unknown"), run.findings().stream().map(finding -> finding.id()).toList());
	}

	private static double fastest(MachineRun run) {
		return run.run().strokes().flatMap(stroke -> stroke.speeds().stream()).mapToDouble(speed -> speed).max().orElseThrow();
	}

	@Test
	void bladesTrailByTheirOffsetAndSwingFromTheThreshold() {
		Job job = Runs.squares("Tags", 1, OperationKind.CUT);
		Workshop workshop = Runs.workshop(Runs.harbour(Map.of("arcs", "yes")), List.of(BLADE), List.of(), List.of(), Runs.white());
		Stroke stroke = Runs.run(job, workshop).run().strokes().findFirst().orElseThrow();
		assertEquals(80, stroke.length(), 1e-6);
		// closed path of the axis: length + 2 π d (swivelling axis, derived)
		assertEquals(80 + 2 * Math.PI * 0.3, stroke.axis().stream().mapToDouble(move -> move.length()).sum(), 1e-6);
		Stroke unswung = Runs.run(job, workshop.swingingFrom(Math.toRadians(91))).run().strokes().findFirst().orElseThrow();
		assertTrue(unswung.axis().stream().allMatch(move -> move.curvature() == 0));
	}

	@Test
	void aBladeThatHasToBeSetOtherwiseStopsTheMachine() {
		Job job = Runs.squares("Labels", 1, OperationKind.CUT, OperationKind.KISS_CUT);
		MachineRun run = Runs.run(job, Runs.workshop(BLADE));
		// a kiss cut goes no deeper than the stock is thick, a cut a tenth more
		assertEquals(List.of(0.3, 0.4), run.work().stream().map(work -> work.settings().exposure()).toList());
		assertEquals(List.of(BLADE, BLADE), run.work().stream().map(LegWork::tool).toList());
		assertEquals(30, run.timeline().seconds(Timeline.Kind.STOP), 1e-9);
		assertEquals(2, new HashSet<>(run.run().legs().stream().map(leg -> leg.tool()).toList()).size());
		job = Runs.squares("Labels", 1, OperationKind.CUT, OperationKind.PERFORATE);
		Runs.operation(job, 0, 1).setTool("b1");
		run = Runs.run(job, Runs.workshop(BLADE));
		assertEquals(0, run.timeline().seconds(Timeline.Kind.STOP), 1e-9, "set alike, it goes on");
	}

	@Test
	void dashesAreCutOneByOneByABlade() {
		Job job = Runs.squares("Tickets", 1, OperationKind.PERFORATE);
		assertEquals(ToolKind.PERFORATING_BLADE, Runs.run(job, Runs.workshop(BLADE)).work().get(0).tool().kind());
		Runs.operation(job, 0, 0).setDash(3);
		Runs.operation(job, 0, 0).setGap(1);
		MachineRun run = Runs.run(job, Runs.workshop(BLADE));
		assertEquals(BLADE, run.work().get(0).tool());
		assertTrue(run.run().strokes().count() > 10);
		run.run().strokes().forEach(stroke -> assertTrue(stroke.length() < 3.5, "a dash of " + stroke.length()));
	}

	@Test
	void linesOfAGangedSheetKnowTheirJobAndTheirCopy() {
		Job host = Runs.squares("Tags", 1, OperationKind.CUT, OperationKind.DRAW);
		Job guest = Runs.squares("Cards", 1, OperationKind.CUT);
		guest.setId("guest");
		Sheet sheet = Runs.sheet(host, 200, 200);
		Runs.lay(sheet, host, null, 30, 30);
		Runs.lay(sheet, host, null, 60, 30);
		Runs.lay(sheet, host, guest, 90, 30);
		MachineRun run = RunMaker.of(Load.of(Runs.laid(host, guest)), Runs.workshop(BLADE, PEN), RunChoices.plain(), () -> false);
		List<Stroke> cuts = run.run().legs().stream().filter(leg -> leg.stage() == Stage.CUT).flatMap(leg -> leg.strokes().stream())
				.toList();
		assertEquals(3, cuts.size());
		assertEquals(3, cuts.stream().map(cut -> cut.line().part()).distinct().count(), "each copy is a part");
		assertEquals(1, cuts.stream().filter(cut -> cut.line().job().equals(guest.getId())).count());
		// what is drawn on a part comes off with it
		run.run().legs().get(0).strokes().forEach(drawn -> assertTrue(
				cuts.stream().anyMatch(cut -> cut.line().part().equals(drawn.line().part()))));
	}

	@Test
	void theSameJobGivesTheSameRunAndCancelStopsIt() {
		Job job = SampleJobs.giftTag();
		assertEquals(Runs.run(job, Runs.workshop(BLADE)).run(), Runs.run(job, Runs.workshop(BLADE)).run());
		assertThrows(CancellationException.class, () -> RunMaker.of(SampleJobs.prepared(job), Runs.workshop(BLADE),
				RunChoices.plain(), () -> true));
	}
}

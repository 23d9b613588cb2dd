package org.frisket.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;

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
import org.frisket.material.trials.Verdict;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.toolpath.RunChoices;
import org.junit.jupiter.api.Test;

/** Each finding when there is reason for it, and none when there is not. */
class RunFindingsTest {

	private static final Tool BLADE = ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("name", "Harbour blade"));

	private static MachineRun run(Job job, Machine machine, Stock stock, Run... runs) {
		return Runs.run(job, Runs.workshop(machine, List.of(BLADE), List.of(), List.of(runs), stock));
	}

	private static MachineRun onSheet(Job job, Workshop workshop) {
		return RunMaker.of(Load.of(Runs.laid(job)), workshop, RunChoices.plain(), () -> false);
	}

	private static List<String> ids(MachineRun run) {
		return run.findings().stream().map(Finding::id).toList();
	}

	private static Job tags() {
		return Runs.squares("Tags", 1, OperationKind.CUT);
	}

	private static Run ran(Settings settings) {
		return new Run("run-1", Instant.EPOCH, "job-7", StockFacts.of(Runs.white()),
				new Setup("harbour", "b1", OperationKind.CUT), settings, Verdict.THROUGH, 1, "");
	}

	@Test
	void nothingSpeaksAgainstWhatFits() {
		Job job = tags();
		Sheet sheet = Runs.sheet(job, 330, 330);
		Runs.lay(sheet, job, null, 165, 165);
		MachineRun run = onSheet(job, Runs.workshop(BLADE));
		assertEquals(List.of(), run.findings());
		assertFalse(run.isBlocked());
	}

	@Test
	void whatLiesBeyondTheReachOfTheMachineBlocks() {
		Job job = tags();
		Sheet sheet = Runs.sheet(job, 330, 330);
		// 330 wide with borders of 10: the square reaches from 305 to 325, the axis of the blade 0.25 farther
		Runs.lay(sheet, job, null, 315, 165);
		MachineRun run = onSheet(job, Runs.workshop(BLADE));
		Finding finding = run.findings().get(0);
		assertEquals("run-outside-area", finding.id());
		assertEquals(5.25, finding.measured().getAsDouble(), 1e-9);
		assertEquals(325.25, finding.place().x(), 1e-9);
		assertEquals("e1", finding.element());
		assertTrue(run.isBlocked());
		MachineRun plain = onSheet(job, new Workshop(Machine.plain(), Runs.workshop(BLADE).desk()));
		assertFalse(plain.isBlocked(), "nobody has said where the machine ends");
		assertTrue(ids(plain).containsAll(List.of("run-outside-area", "run-sheet-too-large", "run-machine-unknown")));
	}

	@Test
	void smallSheetsArePushedIntoTheCornerOfZero() {
		Job job = tags();
		Sheet sheet = Runs.sheet(job, 100, 100);
		// 4 mm from the left edge and 4 mm from the upper one, where a sheet of 100 mm is far from any border
		Runs.lay(sheet, job, null, 14, 14);
		Finding left = onSheet(job, Runs.workshop(BLADE)).findings().get(0);
		assertEquals(6.25, left.measured().getAsDouble(), 1e-9, "zero is lower left");
		Machine right = Runs.harbour(Map.of("origin", "lower-right"));
		assertEquals(List.of(), onSheet(job, Runs.workshop(right, List.of(BLADE), List.of(), List.of(), Runs.white())).findings());
		assertEquals(new Point(100, 100), Bed.of(right, Load.of(Runs.laid(job))).zero());
		Machine within = Runs.harbour(Map.of("origin", "upper-left", "zero-within", "margins", "margin-top", "7mm"));
		assertEquals(new Point(10, 7), Bed.of(within, Load.of(Runs.laid(job))).zero());
		assertEquals(new Point(50, 50), Bed.of(Runs.harbour(Map.of("origin", "centre")), Load.of(Runs.laid(job))).zero());
	}

	@Test
	void sheetsThatDoNotGoInAreTurnedIfThatHelps() {
		Job job = tags();
		Sheet sheet = Runs.sheet(job, 330, 480);
		Runs.lay(sheet, job, null, 165, 400);
		Machine wide = Runs.harbour(Map.of("width", "480mm"));
		Finding turned = onSheet(job, Runs.workshop(wide, List.of(BLADE), List.of(), List.of(), Runs.white())).findings().get(0);
		assertEquals("run-sheet-too-large", turned.id());
		assertEquals(Messages.RunFindings_largeTurn, turned.cure());
		assertEquals(Messages.RunFindings_largeCure, onSheet(job, Runs.workshop(BLADE)).findings().get(0).cure());
	}

	@Test
	void toolsThatAreNotThereAreSaid() {
		Job job = tags();
		Runs.operation(job, 0, 0).setTool("fine-blade");
		MachineRun run = run(job, Runs.harbour(), Runs.white());
		assertEquals(List.of("run-tool-missing"), ids(run));
		assertTrue(run.findings().get(0).message().contains("fine-blade"), run.findings().get(0).message());
		Jobs.addOperation(job.getLayers().get(0).getElements().get(0), OperationKind.DRAW);
		Runs.operation(job, 0, 0).setTool("b1");
		assertEquals(List.of("run-tool-usual"), ids(run(job, Runs.harbour(), Runs.white())));
	}

	@Test
	void bladesThatWillNotLastAreSaid() {
		Job job = tags();
		Tool worn = ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("worn", "299.9"));
		Stock glitter = Runs.white().change().abrasion(new BigDecimal(3)).build();
		// 0.08 m of plain card are borne, 0.24 m of what wears three times as fast are not
		Tool nearly = ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("worn", "0.5", "dull-after", "1"));
		assertEquals(List.of(), ids(Runs.run(job, Runs.workshop(Runs.harbour(), List.of(nearly), List.of(), List.of(), Runs.white()))));
		MachineRun run = Runs.run(job, Runs.workshop(Runs.harbour(), List.of(worn), List.of(), List.of(), glitter));
		assertEquals(List.of("run-edge"), ids(run));
		assertFalse(run.work().get(0).cautions().stream().anyMatch(caution -> caution.id().equals("blade.wear")), "said once");
	}

	@Test
	void settingsThatTheMachineDoesNotHaveAreSaid() {
		Job job = tags();
		job.setId("job-7");
		assertEquals(List.of("run-setting-out-of-range", "run-setting-out-of-range", "run-passes"),
				ids(run(job, Runs.harbour(), Runs.white(), ran(new Settings(0.4, 40, 5, 11)))));
		assertEquals(List.of(), ids(run(job, Runs.harbour(), Runs.white(), ran(new Settings(0.4, 33, 10, 10)))));
	}

	@Test
	void exposureIsHeldAgainstTheThickness() {
		Job job = tags();
		job.setId("job-7");
		assertEquals(List.of("run-exposure-short"),
				ids(run(job, Runs.harbour(), Runs.white(), ran(new Settings(0.29, 20, 50, 1)))));
		assertEquals(List.of("run-exposure-far"),
				ids(run(job, Runs.harbour(), Runs.white(), ran(new Settings(0.61, 20, 50, 1)))));
		assertEquals(List.of(), ids(run(job, Runs.harbour(), Runs.white(), ran(new Settings(0.6, 20, 50, 1)))));
		assertEquals(List.of(), ids(run(job, Runs.harbour(Map.of("process", "laser")), Runs.white(),
				ran(new Settings(0, 20, 50, 1)))), "a beam has no exposure");
	}

	@Test
	void plasticIsNotHeated() {
		Stock film = Runs.white().change().family(StockFamily.FILM).build();
		MachineRun run = run(tags(), Runs.harbour(Map.of("process", "laser")), film);
		assertEquals(List.of("run-heat"), ids(run));
		assertTrue(run.isBlocked());
		assertEquals(List.of(), ids(run(tags(), Runs.harbour(), film)));
		// nor is what nobody can name
		Job job = tags();
		job.getLayers().get(0).setStock("nobody-knows");
		run = run(job, Runs.harbour(Map.of("process", "laser")), film);
		assertEquals(List.of("run-heat", "run-stock-unknown"), ids(run));
		assertTrue(run.isBlocked());
		assertEquals(List.of("run-stock-unknown"), ids(run(job, Runs.harbour(), film)));
		job.getLayers().get(0).setStock("card");
		assertEquals(List.of(), ids(run(job, Runs.harbour(Map.of("process", "laser")), film)));
	}

	@Test
	void severalStocksOnTheBenchAreSaid() {
		Job job = tags();
		var layer = Jobs.addLayer(job, "Film");
		layer.setStock("film");
		Outline outline = Jobs.addOutline(layer, Runs.square(40, 0, 20));
		Jobs.addOperation(outline, OperationKind.CUT);
		MachineRun run = run(job, Runs.harbour(), Runs.white());
		assertEquals(List.of("run-several-stocks"), ids(run));
		assertEquals(List.of(StockFamily.CARD, StockFamily.FILM), run.work().stream().map(work -> work.stock().family()).toList());
		assertTrue(run.run().stopsBefore(1));
	}

	@Test
	void perforationsByAPlainBladeNeedDashes() {
		Job job = Runs.squares("Tickets", 1, OperationKind.PERFORATE);
		Runs.operation(job, 0, 0).setTool("b1");
		assertEquals(List.of("run-perforation-whole"), ids(run(job, Runs.harbour(), Runs.white())));
		Runs.operation(job, 0, 0).setDash(3);
		Runs.operation(job, 0, 0).setGap(1);
		assertEquals(List.of(), ids(run(job, Runs.harbour(), Runs.white())));
	}

	@Test
	void anEmptySheetIsSaid() {
		Job job = Runs.squares("Prints", 1, OperationKind.PRINT);
		MachineRun run = run(job, Runs.harbour(), Runs.white());
		assertEquals(List.of("run-empty"), ids(run));
		assertEquals(Severity.NOTE, run.findings().get(0).severity());
		assertEquals(0, run.timeline().seconds());
		assertEquals(1, Costing.of(run, Load.bench(org.frisket.testkit.SampleJobs.prepared(job)), Runs.workshop(BLADE),
				java.util.Optional.empty()).shares().size());
	}
}

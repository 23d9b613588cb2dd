package org.frisket.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.frisket.geometry.Point;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.model.Sheet;
import org.frisket.studio.StudioFolder;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.Timeline;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CostingTest {

	private static final Tool BLADE = ToolOptions.tool(ToolKind.BLADE, "b1", Map.of("offset", "0mm", "worn", "299.9"));
	private static final Tool PEN = ToolOptions.tool(ToolKind.PEN, "p1", Map.of());
	private static final Rate RATE = Rate.parse("36.00 EUR");

	private static RunCost cost(Load load, Workshop workshop, Rate rate) {
		MachineRun run = RunMaker.of(load, workshop, RunChoices.plain(), () -> false);
		return Costing.of(run, load, workshop, Optional.ofNullable(rate));
	}

	private static BigDecimal amount(Optional<Price> price) {
		return price.orElseThrow().amount();
	}

	/** A host with one tag and one drawing, a guest with two tags, on one sheet. */
	private static Load ganged(Stock... stock) {
		Job host = Runs.squares("Tags", 1, OperationKind.CUT, OperationKind.DRAW);
		host.setNumber("2031-7");
		Job guest = Runs.squares("Cards", 1, OperationKind.CUT);
		guest.setId("guest");
		Sheet sheet = Runs.sheet(host, 200, 200);
		Runs.lay(sheet, host, null, 30, 30);
		Runs.lay(sheet, host, guest, 70, 30);
		Runs.lay(sheet, host, guest, 110, 30);
		return Load.of(Runs.laid(host, guest));
	}

	@Test
	void aGangedSheetIsSharedByTheRoomOfTheParts() {
		Load load = ganged();
		Workshop workshop = Runs.workshop(BLADE, PEN);
		RunCost cost = cost(load, workshop, RATE);
		assertEquals(List.of("2031-7", "Cards"), cost.shares().stream().map(RunCost.Share::name).toList());
		assertEquals(List.of(400.0, 800.0), cost.shares().stream().map(share -> share.area()).map(Math::rint).toList());
		assertEquals(new BigDecimal("0.45"), amount(cost.material()));
		assertEquals(new BigDecimal("0.15"), amount(cost.shares().get(0).material()), "400 of 1200 mm² of 0.45");
		assertEquals(0, new BigDecimal("0.30").compareTo(amount(cost.shares().get(1).material())));
		// a hundredth of a EUR for each second at 36 EUR an hour
		assertEquals(Math.round(cost.seconds().all()), amount(cost.time()).movePointRight(2).doubleValue(), 0.5);
		assertEquals(amount(cost.time()),
				amount(cost.shares().get(0).time()).add(amount(cost.shares().get(1).time())).stripTrailingZeros());
		assertEquals(cost.seconds().all(), cost.shares().stream().mapToDouble(RunCost.Share::seconds).sum(), 1e-9);
		assertEquals(amount(cost.total()), amount(cost.material()).add(amount(cost.time())));
	}

	/**
	 * By hand: a pen draws 50 mm for one job and 10 mm for the other, at 100 mm/s and 1000 mm/s²: from rest 0.6 and 0.2 s. It
	 * sets down and lifts twice in 0.1 s each, and is changed in 30 s before the second line. Travel from rest takes
	 * D / v + v / a. The stop and the way home fall to both as their own times do.
	 */
	@Test
	void timeFallsToTheJobWhoseLineItIs() {
		// 30 % of the range are 100 mm/s
		Machine machine = Runs.harbour(Map.of("speed-most", "310", "speed-most-means", "310", "travel-speed", "100"));
		Workshop workshop = Runs.workshop(machine, List.of(PEN), List.of(), List.of());
		Job host = SampleJobs.outline("M0 50h50", OperationKind.DRAW);
		host.setId("host");
		Job guest = SampleJobs.outline("M100 50h10", OperationKind.DRAW);
		guest.setId("guest");
		MachineRun one = Runs.run(host, workshop);
		MachineRun other = Runs.run(guest, workshop);
		Leg first = one.run().legs().get(0);
		Leg second = other.run().legs().get(0);
		Run both = new Run(List.of(first, new Leg(second.stage(), "another", second.strokes())));
		Drive drive = new Drive(100, 1000, 0.02);
		Point home = first.strokes().get(0).start();
		Carriage carriage = new Carriage(drive, 0.1, 0.1, 30, new Point(home.x(), home.y() - 50), false, 0.02);
		ToolMotion motion = new ToolMotion("p1", new TrailingBlade(0, 0), drive);
		MachineRun run = new MachineRun(machine, carriage, both, List.of(one.work().get(0), other.work().get(0)),
				Timeline.of(both, Map.of("p1", motion, "another", motion), carriage));
		RunCost cost = Costing.of(run, Load.bench(SampleJobs.prepared(host)), workshop, Optional.of(RATE));
		double between = travel(first.strokes().get(0).end(), second.strokes().get(0).start());
		double back = travel(second.strokes().get(0).end(), carriage.home());
		double hosts = 0.6 + 0.6 + 0.2;
		double guests = between + 0.2 + 0.2;
		assertEquals(0.8, cost.seconds().strokes(), 1e-9);
		assertEquals(0.4, cost.seconds().lifts(), 1e-9);
		assertEquals(30, cost.seconds().stops(), 1e-9);
		assertEquals(0.6 + between + back, cost.seconds().travel(), 1e-9);
		assertEquals(List.of("host", "guest"), cost.shares().stream().map(RunCost.Share::job).toList());
		double factor = 1 + (30 + back) / (hosts + guests);
		assertEquals(hosts * factor, cost.shares().get(0).seconds(), 1e-9);
		assertEquals(guests * factor, cost.shares().get(1).seconds(), 1e-9);
		assertEquals(0.06, cost.metres(), 1e-9);
	}

	/** D / v + v / a for ways of 10 mm and more at 100 mm/s and 1000 mm/s². */
	private static double travel(Point from, Point to) {
		return Math.hypot(to.x() - from.x(), to.y() - from.y()) / 100 + 0.1;
	}

	@Test
	void edgesAreWornByTheStockAsFarAsTheyAreCut() {
		Stock glitter = Runs.white().change().abrasion(new BigDecimal(3)).build();
		Job job = Runs.squares("Tags", 1, OperationKind.CUT, OperationKind.DRAW);
		RunCost cost = cost(Load.bench(SampleJobs.prepared(job)),
				Runs.workshop(Runs.harbour(), List.of(BLADE, PEN), List.of(), List.of(), glitter), null);
		RunCost.ToolUse pen = cost.tools().get(0);
		RunCost.ToolUse blade = cost.tools().get(1);
		assertEquals(0.08, pen.metres(), 1e-9);
		assertTrue(pen.edge().isEmpty());
		assertEquals(0.08, blade.metres(), 1e-9);
		assertEquals(299.9 + 3 * 0.08, blade.edge().orElseThrow().wornMetres(), 1e-9);
		assertTrue(cost.material().isEmpty() && cost.time().isEmpty() && cost.total().isEmpty(), "nobody knows what it costs");
	}

	@Test
	void rollsArePaidByWhatIsUsedAndLeftoversAreNot() {
		Job job = Runs.squares("Tags", 1, OperationKind.CUT);
		Sheet sheet = Runs.sheet(job, 150, 300);
		Runs.lay(sheet, job, null, 30, 30);
		sheet.setRoll(true);
		Workshop workshop = Runs.workshop(BLADE);
		// 0.15 m of 0.45 EUR are 0.0675 EUR
		assertEquals(new BigDecimal("0.07"), amount(cost(Load.of(Runs.laid(job)), workshop, null).material()));
		sheet.setLeftover("leftover-1");
		assertEquals(0, amount(cost(Load.of(Runs.laid(job)), workshop, null).material()).signum());
		sheet.setStock("nobody-knows");
		assertTrue(cost(Load.of(Runs.laid(job)), workshop, null).material().isEmpty());
	}

	@Test
	void twoCurrenciesHaveNoSum() {
		RunCost cost = cost(ganged(), Runs.workshop(BLADE, PEN), Rate.parse("30 USD"));
		assertTrue(cost.total().isEmpty());
		assertTrue(cost.shares().stream().allMatch(share -> share.total().isEmpty()));
		RunCost unpaid = cost(ganged(), Runs.workshop(BLADE, PEN), null);
		assertEquals(unpaid.material(), unpaid.total());
	}

	/** 1.00 in three equal parts leaves a hundredth over; Hamilton's method gives it to the first. */
	@Test
	void sharesSumToTheWhole() {
		assertEquals(List.of(new BigDecimal("0.34"), new BigDecimal("0.33"), new BigDecimal("0.33")),
				LargestRemainder.part(new BigDecimal("1.00"), 2, List.of(5.0, 5.0, 5.0)));
		assertEquals(List.of(new BigDecimal("0.01"), new BigDecimal("0.04"), new BigDecimal("0.05")),
				LargestRemainder.part(new BigDecimal("0.10"), 2, List.of(1.4, 3.6, 5.0)), "0.014, 0.036 and 0.050");
		assertEquals(List.of(new BigDecimal("1"), new BigDecimal("1")), LargestRemainder.part(new BigDecimal(2), 0, List.of(0.0, 0.0)));
		Random random = new Random(11);
		for (int i = 0; i < 500; i++) {
			int decimals = random.nextInt(5);
			BigDecimal whole = BigDecimal.valueOf(random.nextInt(100_000), decimals);
			List<Double> weights = new ArrayList<>();
			for (int k = random.nextInt(7); k >= 0; k--) {
				weights.add(random.nextInt(4) == 0 ? 0 : random.nextDouble() * 1e6);
			}
			List<BigDecimal> parts = LargestRemainder.part(whole, decimals, weights);
			assertEquals(0, whole.compareTo(parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add)));
			double sum = weights.stream().mapToDouble(weight -> weight).sum();
			for (int k = 0; sum > 0 && k < parts.size(); k++) {
				assertEquals(whole.doubleValue() * weights.get(k) / sum, parts.get(k).doubleValue(), Math.pow(10, -decimals));
				assertTrue(parts.get(k).signum() >= 0);
			}
		}
	}

	@Test
	void ratesAreReadFromTextsAndTheStudio(@TempDir Path folder) throws Exception {
		assertEquals("30.00 EUR", Rate.parse(" 30 eur").toString());
		assertEquals(Rate.parse("27,5 EUR"), Rate.parse(Rate.parse("27.50 EUR").toString()));
		for (String wrong : List.of("", "EUR", "30", "-3 EUR", "30 EURO", "30 QQQ", "1e9 EUR", "3.00001 EUR")) {
			assertThrows(IllegalArgumentException.class, () -> Rate.parse(wrong), wrong);
		}
		StudioFolder studio = new StudioFolder(folder);
		assertTrue(Rate.of(studio).isEmpty());
		studio.preferences().put(Rate.KEY, "30.00 EUR");
		assertEquals(Optional.of(Rate.parse("30 EUR")), Rate.of(studio));
	}
}

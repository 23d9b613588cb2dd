package org.frisket.material.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.material.StockFamily;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolKind;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Settings;
import org.frisket.material.trials.Setup;
import org.frisket.material.trials.StockFacts;
import org.frisket.material.trials.Trial;
import org.frisket.material.trials.Verdict;
import org.frisket.model.OperationKind;
import org.junit.jupiter.api.Test;

class SettingsAdvisorTest {

	private static final LocalDate DAY = LocalDate.of(2031, 5, 17);
	private static final Tool BLADE = ToolOptions.usual(ToolKind.BLADE);
	private static final Machine MACHINE = MachineOptions.machine("harbour",
			Map.of("pressure-least", "1", "pressure-most", "33", "passes-most", "4"));
	private static final Setup SETUP = new Setup("harbour", "blade", OperationKind.CUT);

	private static StockFacts card(double grammage) {
		return StockFacts.of(StockFamily.CARD, grammage, 0);
	}

	private static Work work(StockFacts stock) {
		return new Work(stock, MACHINE, BLADE, OperationKind.CUT);
	}

	private static Advice rule(StockFacts stock) {
		return new SettingsAdvisor(List.of(), RulesOfThumb.USUAL).advise(work(stock));
	}

	private static Trial trial(int number, StockFacts stock, Settings settings, Verdict verdict, double wear) {
		return new Trial("t" + number, DAY, stock, SETUP, settings, verdict, wear, "");
	}

	/** Five repeats of pressures from 10 to 30: through from one on, into the carrier from another on. */
	private static List<Trial> sweep(double grammage, double through, double carrier, int passes) {
		List<Trial> trials = new ArrayList<>();
		for (double pressure = 10; pressure <= 30; pressure += 4) {
			for (int i = 0; i < 5; i++) {
				Verdict verdict = pressure < through ? Verdict.NOT_THROUGH
						: pressure < carrier ? Verdict.THROUGH : Verdict.CARRIER_CUT;
				trials.add(trial(trials.size(), card(grammage), new Settings(0.4, pressure, 20 + i, passes), verdict, 0));
			}
		}
		return trials;
	}

	/** Rules of thumb of common practice, no source: thickness and 0.1 mm; 1 pass to 216 g/m², 2 to 300, 3 above. */
	@Test
	void withoutTrialsTheRulesOfThumbHoldAndSayThatTheyAre() {
		assertEquals(1, rule(card(216)).settings().passes());
		assertEquals(2, rule(card(216.4)).settings().passes());
		assertEquals(2, rule(card(300)).settings().passes());
		assertEquals(3, rule(card(301)).settings().passes());
		Advice advice = rule(StockFacts.of(StockFamily.CARD, 216, 0.3));
		assertEquals(0.4, advice.settings().exposure(), 1e-9);
		assertEquals(Confidence.RULE_OF_THUMB, advice.confidence());
		assertNull(advice.window());
		assertTrue(advice.reasons().get(0).contains("rules of thumb"), advice.reasons().toString());
		assertTrue(advice.reasons().stream().anyMatch(reason -> reason.contains("no source")));
		assertTrue(advice.cautions().stream().anyMatch(caution -> caution.text().contains("manual")));
	}

	@Test
	void aGuessedThicknessIsCalledAGuess() {
		Advice advice = rule(card(250));
		assertEquals(0.4, advice.settings().exposure(), 1e-9, "250 g/m² at 1.2 cm³/g are 0.3 mm");
		assertTrue(advice.reasons().stream().anyMatch(reason -> reason.contains("guess from the weight")));
		assertEquals(0, rule(card(0)).settings().exposure());
		assertTrue(rule(card(0)).reasons().stream().anyMatch(reason -> reason.contains("Neither weight nor thickness")));
	}

	@Test
	void theRulesAreTheStudiosToChange() {
		RulesOfThumb own = RulesOfThumb.of(Map.of("one-pass-to", "120", "exposure-over", "0.05mm", "start-pressure", "50"));
		assertEquals(own, RulesOfThumb.of(own.texts()));
		Advice advice = new SettingsAdvisor(List.of(), own).advise(work(StockFacts.of(StockFamily.CARD, 160, 0.2)));
		assertEquals(new Settings(0.25, 17, 30, 2), advice.settings());
		assertThrows(IllegalArgumentException.class, () -> RulesOfThumb.of(Map.of("bulk", "thick")));
	}

	@Test
	void aKissCutDoesNotGoBeyondItsStockAndAPenHasNoBlade() {
		Advice kiss = new SettingsAdvisor(List.of(), RulesOfThumb.USUAL).advise(
				new Work(StockFacts.of(StockFamily.FILM, 0, 0.08), MACHINE, BLADE, OperationKind.KISS_CUT));
		assertEquals(0.08, kiss.settings().exposure(), 1e-9);
		assertEquals(1, kiss.settings().passes());
		Advice pen = new SettingsAdvisor(List.of(), RulesOfThumb.USUAL)
				.advise(new Work(card(300), MACHINE, ToolOptions.usual(ToolKind.PEN), OperationKind.DRAW));
		assertEquals(0, pen.settings().exposure());
		assertEquals(1, pen.settings().passes());
		assertThrows(IllegalArgumentException.class, () -> new Work(card(300), MACHINE,
				ToolOptions.usual(ToolKind.PEN), OperationKind.CUT));
	}

	@Test
	void trialsGiveTheMiddleOfTheWindowWithReasons() {
		Advice advice = new SettingsAdvisor(sweep(216, 14, 26, 1), RulesOfThumb.USUAL).advise(work(card(216)));
		assertEquals(new Settings(0.4, 18, 22, 1), advice.settings());
		assertEquals(14, advice.window().from());
		assertEquals(22, advice.window().to());
		assertEquals(10, advice.window().fromLeast());
		assertEquals(14, advice.window().fromMost());
		assertEquals(Confidence.GOOD, advice.confidence());
		assertEquals(30, advice.trials());
		assertFalse(advice.outside());
		assertTrue(advice.reasons().get(0).contains("30 trials"), advice.reasons().toString());
	}

	@Test
	void outsideOfWhatWasTriedItSaysSo() {
		SettingsAdvisor advisor = new SettingsAdvisor(sweep(216, 14, 26, 1), RulesOfThumb.USUAL);
		for (double grammage : new double[] { 120, 300 }) {
			Advice advice = advisor.advise(work(card(grammage)));
			assertTrue(advice.outside());
			assertEquals(Confidence.LOW, advice.confidence());
			assertTrue(advice.reasons().get(1).contains("than anything tried"), advice.reasons().toString());
		}
	}

	@Test
	void whereOnePassLeavesNoWindowTwoAreAdvised() {
		List<Trial> trials = new ArrayList<>(sweep(300, 26, 18, 1));
		sweep(300, 14, 26, 2).forEach(
				each -> trials.add(new Trial("2" + each.id(), DAY, each.stock(), SETUP, each.settings(), each.verdict(), 0, "")));
		Advice advice = new SettingsAdvisor(trials, RulesOfThumb.USUAL).advise(work(card(300)));
		assertEquals(2, advice.settings().passes());
		Advice closed = new SettingsAdvisor(sweep(300, 26, 18, 1), RulesOfThumb.USUAL).advise(work(card(300)));
		assertEquals(1, closed.settings().passes());
		assertFalse(closed.window().isOpen());
		assertEquals(Confidence.LOW, closed.confidence());
	}

	@Test
	void dullAndTornOnesAreLeftOutAndCounted() {
		List<Trial> trials = new ArrayList<>(sweep(216, 14, 26, 1));
		Settings low = new Settings(0.4, 10, 20, 1);
		trials.add(trial(100, card(216), low, Verdict.TORN, 0));
		trials.add(trial(101, card(216), low, Verdict.THROUGH, 1.2));
		Advice advice = new SettingsAdvisor(trials, RulesOfThumb.USUAL).advise(work(card(216)));
		assertEquals(30, advice.trials());
		assertTrue(advice.reasons().get(advice.reasons().size() - 1).matches(".*1 made with a dull blade, 1 that tore.*"),
				advice.reasons().toString());
	}

	@Test
	void otherFamiliesMachinesToolsAndOperationsSayNothing() {
		SettingsAdvisor advisor = new SettingsAdvisor(sweep(216, 14, 26, 1), RulesOfThumb.USUAL);
		assertEquals(Confidence.RULE_OF_THUMB,
				advisor.advise(work(StockFacts.of(StockFamily.PAPER, 216, 0))).confidence());
		assertEquals(Confidence.RULE_OF_THUMB, advisor
				.advise(new Work(card(216), Machine.plain(), BLADE, OperationKind.CUT)).confidence());
		assertEquals(Confidence.RULE_OF_THUMB, advisor
				.advise(new Work(card(216), MACHINE, BLADE, OperationKind.KISS_CUT)).confidence());
		assertEquals(Confidence.RULE_OF_THUMB,
				advisor.advise(new Work(card(216), MACHINE,
						ToolOptions.tool(ToolKind.BLADE, "other", Map.of()), OperationKind.CUT)).confidence());
	}

	@Test
	void pressureNeverFallsWithWeightAndTheOrderOfTrialsDoesNotMatter() {
		Random random = new Random(12);
		for (int round = 0; round < 150; round++) {
			List<Trial> trials = new ArrayList<>();
			for (int i = 0; i < 5 + random.nextInt(150); i++) {
				trials.add(trial(i, card(100 + 25 * random.nextInt(10)),
						new Settings(0.2 + random.nextInt(4) / 10.0, 1 + random.nextInt(33), random.nextInt(100), 1),
						Verdict.values()[random.nextInt(Verdict.values().length)], 0));
			}
			List<Trial> shuffled = new ArrayList<>(trials);
			Collections.shuffle(shuffled, random);
			SettingsAdvisor advisor = new SettingsAdvisor(trials, RulesOfThumb.USUAL);
			SettingsAdvisor other = new SettingsAdvisor(shuffled, RulesOfThumb.USUAL);
			double last = 0;
			for (double grammage = 80; grammage <= 360; grammage += 7) {
				Advice advice = advisor.advise(work(card(grammage)));
				assertEquals(advice, other.advise(work(card(grammage))));
				assertTrue(advice.confidence() == Confidence.RULE_OF_THUMB || advice.settings().pressure() >= last);
				assertTrue(MACHINE.pressure().has(advice.settings().pressure()));
				last = advice.settings().pressure();
			}
		}
	}

	@Test
	void plasticAndWhatNobodyCanNameIsBlockedOnHotMachines() {
		Machine laser = MachineOptions.machine("beam", Map.of("process", "laser"));
		Machine foil = MachineOptions.machine("press", Map.of("process", "foil"));
		for (StockFamily family : List.of(StockFamily.FILM, StockFamily.OTHER)) {
			for (Machine hot : List.of(laser, foil)) {
				Caution first = Cautions.of(family, hot, BLADE, OperationKind.CUT).get(0);
				assertTrue(first.isBlocking() && first.text().contains("PVC"), family + " on " + hot.id());
			}
			assertFalse(Cautions.of(family, MACHINE, BLADE, OperationKind.CUT).stream().anyMatch(Caution::isBlocking));
		}
		assertFalse(Cautions.of(StockFamily.CARD, laser, BLADE, OperationKind.CUT).stream().anyMatch(Caution::isBlocking));
		assertTrue(Cautions.of(StockFamily.LABEL, foil, BLADE, OperationKind.CUT).stream()
				.anyMatch(caution -> caution.id().equals("heat.plastic")));
	}

	@Test
	void aDullBladeIsSaid() {
		Blade dull = new Blade("blade", "Old one", 45, 0.25, new Edge(310, 300));
		Advice advice = new SettingsAdvisor(List.of(), RulesOfThumb.USUAL)
				.advise(new Work(card(216), MACHINE, dull, OperationKind.CUT));
		assertTrue(advice.cautions().stream().anyMatch(
				caution -> caution.text().contains("Old one") && caution.text().contains("310 m")), advice.toString());
	}
}

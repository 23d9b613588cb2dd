package org.frisket.material.tools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.geometry.options.Option;
import org.junit.jupiter.api.Test;

class MachineOptionsTest {

	private static final Map<String, String> HARBOUR = Map.ofEntries(Map.entry("name", "Harbour cutter"),
			Map.entry("process", "foil"), Map.entry("width", "304.8mm"), Map.entry("height", "12in"),
			Map.entry("margin-left", "6mm"), Map.entry("pressure-unit", "step"), Map.entry("pressure-least", "1"),
			Map.entry("pressure-most", "33"), Map.entry("pressure-least-means", "10"),
			Map.entry("pressure-most-means", "210"), Map.entry("speed-unit", "mm/s"), Map.entry("speed-least", "10"),
			Map.entry("speed-most", "400"), Map.entry("speed-step", "10"), Map.entry("passes-most", "3"),
			Map.entry("x-grows", "left"), Map.entry("y-grows", "near"), Map.entry("origin", "upper-right"),
			Map.entry("register-marks", "yes"));

	@Test
	void aMachineSurvivesItsTexts() {
		Machine machine = MachineOptions.machine("harbour", HARBOUR);
		Machine again = MachineOptions.machine("harbour", MachineOptions.texts(machine));
		assertEquals(MachineOptions.texts(machine), MachineOptions.texts(again));
		assertEquals(again, MachineOptions.machine("harbour", MachineOptions.texts(again)));
		assertEquals(Process.FOIL, machine.process());
		assertEquals(Corner.UPPER_RIGHT, machine.plotting().origin());
		assertEquals(288.8, machine.area().usableWidth(), 1e-9);
		assertEquals(1000, machine.plotting().units(25));
		assertEquals(Machine.plain(), MachineOptions.machine("plain", MachineOptions.texts(Machine.plain())));
	}

	@Test
	void motionAndWordsSurviveTheirTexts() {
		Machine machine = MachineOptions.machine("harbour", Map.ofEntries(Map.entry("acceleration", "4000 mm/s²"),
				Map.entry("corner-deviation", "0.05mm"), Map.entry("travel-speed", "400"), Map.entry("lower-time", "0.2s"),
				Map.entry("lift-time", "0.15"), Map.entry("change-time", "45"), Map.entry("arcs", "yes"),
				Map.entry("tolerance", "0.01mm"), Map.entry("word-down", " G1 Z-1 F300 "), Map.entry("word-up", "G0 Z2"),
				Map.entry("word-stop", "M1"), Map.entry("zero-within", "margins")));
		assertEquals(new Machine.Motion(4000, 0.05, 400, 0.2, 0.15, 45, true, 0.01), machine.motion());
		assertEquals(new Machine.Words("G1 Z-1 F300", "G0 Z2", "M1"), machine.words());
		assertTrue(machine.plotting().inMargins());
		assertEquals(machine, MachineOptions.machine("harbour", MachineOptions.texts(machine)));
		assertEquals(machine.motion(), machine.withScale(1.01, 1).motion());
		assertTrue(machine.withScale(1.01, 1).plotting().inMargins());
	}

	@Test
	void machinesOfStoresFromBeforeMoveAsUsual() {
		// what was kept before a machine had motion and words names none of them
		Map<String, String> now = MachineOptions.texts(MachineOptions.machine("harbour", HARBOUR));
		Map<String, String> before = new LinkedHashMap<>(now);
		before.keySet().removeIf(name -> MotionOptions.MOVES.stream().anyMatch(option -> option.name().equals(name))
				|| MotionOptions.WORDS.stream().anyMatch(option -> option.name().equals(name)) || name.equals("zero-within"));
		assertEquals(before.keySet().size() + 12, MachineOptions.options().size());
		assertEquals(MachineOptions.machine("harbour", now), MachineOptions.machine("harbour", before));
	}

	/** A word becomes a line of a program: it must not begin a comment or another line. */
	@Test
	void wordsAreOneBlock() {
		for (String wrong : List.of("", "   ", "M3\nG0 X0", "M3 (down)", "M3;down", "M3%", "é", "M".repeat(61))) {
			assertEquals(List.of("word-down"), wrong(Map.of("word-down", wrong)), wrong);
		}
		assertEquals(List.of(), wrong(Map.of("word-down", "S1000 M3", "word-up", "G0 Z+2.5", "word-stop", "m0")));
	}

	@Test
	void textsNameEveryOption() {
		assertEquals(MachineOptions.options().stream().map(Option::name).toList(),
				List.copyOf(MachineOptions.texts(Machine.plain()).keySet()));
	}

	@Test
	void whatDoesNotGoTogetherIsSaid() {
		assertEquals(List.of("width"), wrong(Map.of("margin-left", "150mm", "margin-right", "60mm")));
		assertEquals(List.of("height"), wrong(Map.of("height", "20mm")));
		assertEquals(List.of("speed-most"), wrong(Map.of("speed-least", "100")));
		assertEquals(List.of("pressure-step"), wrong(Map.of("pressure-step", "101")));
		assertEquals(List.of("pressure-most-means"), wrong(Map.of("pressure-least-means", "50")));
		assertThrows(IllegalArgumentException.class, () -> MachineOptions.machine("m", Map.of("height", "20mm")));
	}

	private static List<String> wrong(Map<String, String> texts) {
		return MachineOptions.problems(texts).stream().map(Problem::option).toList();
	}

	@Test
	void theQuestionsSetEveryOptionOnce() {
		List<String> asked = new ArrayList<>();
		ManualQuestions.all().forEach(question -> {
			assertFalse(question.words().isBlank());
			question.options().forEach(option -> asked.add(option.name()));
		});
		assertEquals(asked.size(), new HashSet<>(asked).size());
		assertEquals(new HashSet<>(MachineOptions.options().stream().map(Option::name).toList()), new HashSet<>(asked));
	}

	@Test
	void answersAreCheckedQuestionByQuestionAndTogether() {
		Map<String, String> answers = new LinkedHashMap<>();
		answers.put("width", "wide");
		assertEquals(1, ManualQuestions.all().get(2).problems(answers).size());
		assertTrue(ManualQuestions.problems(HARBOUR).isEmpty());
		assertFalse(ManualQuestions.problems(Map.of("height", "15mm")).isEmpty());
	}

	@Test
	void stepsGoToNeutralAndBackForEveryStep() {
		NativeScale scale = MachineOptions.machine("harbour", HARBOUR).pressure();
		for (int step = 1; step <= 33; step++) {
			assertTrue(scale.has(step));
			assertEquals(step, scale.ofNeutral(scale.neutral(step)));
			assertEquals(step, scale.ofMeaning(scale.meaning(step).orElseThrow()).orElseThrow());
		}
		assertEquals(10, scale.meaning(1).orElseThrow(), 1e-12);
		assertEquals(110, scale.meaning(17).orElseThrow(), 1e-12);
		assertEquals(0, scale.neutral(1));
		assertEquals(1, scale.neutral(33));
		assertFalse(scale.has(0) || scale.has(34) || scale.has(2.5));
		assertTrue(Machine.plain().pressure().meaning(50).isEmpty());
	}

	@Test
	void roundingKeepsItsSideAndStaysInRange() {
		Random random = new Random(7);
		for (int i = 0; i < 2000; i++) {
			double step = 0.05 + random.nextInt(40) / 20.0;
			double least = random.nextInt(20) / 10.0;
			NativeScale scale = new NativeScale("", least, least + step * (1 + random.nextInt(50)) + step / 3, step, null);
			double value = least + random.nextDouble() * (scale.most() - least);
			double above = scale.atLeast(value);
			double below = scale.atMost(value);
			assertTrue(scale.has(above) && scale.has(below) && scale.has(scale.nearest(value)));
			assertTrue(below <= value + 1e-6 * step);
			assertTrue(above >= value - 1e-6 * step || above == scale.atMost(scale.most()));
			assertTrue(above - below <= step * 1.000001);
		}
	}
}

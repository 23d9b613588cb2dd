package org.frisket.orders.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.StoredJob;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whatever is planned, said and taken back, in whatever order: what is made and what is missing come to what was ordered,
 * stock is counted once, and jobs are at the stage that their pieces say.
 */
class RunsHoldTest extends BothDatabases {

	private static final int STEPS = 20;
	private static final BigDecimal SHELF = new BigDecimal("500");

	private record Key(long number, StockColour of) {
	}

	/** What was said of a run, as the test remembers it. */
	private record Said(Map<Key, Integer> made, BigDecimal used) {
	}

	private SampleStudio studio;
	private int marks;
	private final Map<Long, Deque<Said>> said = new HashMap<>();

	@ParameterizedTest
	@CsvSource({ "false, 1", "false, 2", "true, 4" })
	void sumsHold(boolean shared, long seed) throws Exception {
		studio = new SampleStudio(emptyStudio(shared));
		studio.shelve(SampleStudio.CARD, SHELF.toPlainString());
		studio.shelve(SampleStudio.FILM, SHELF.toPlainString());
		List<Long> jobs = List.of(studio.approved("Gift tags", 3, null, SampleStudio.CARD),
				studio.approved("Place cards", 7, null, SampleStudio.CARD, SampleStudio.FILM),
				studio.approved("Ferry banner", 2, null, SampleStudio.FILM));
		List<String> ids = new ArrayList<>();
		for (long number : jobs) {
			ids.add(studio.entry(number).id());
		}
		Random random = new Random(seed);
		for (int step = 0; step < STEPS; step++) {
			List<PlannedRun> runs = studio.runs().all();
			int what = random.nextInt(10);
			String told = "step " + step + ": " + what;
			if (runs.isEmpty() || what < 3) {
				plan(jobs, random);
			} else {
				PlannedRun run = runs.get(random.nextInt(runs.size()));
				if (what < 7 && run.next().isPresent()) {
					mark(run, random);
				} else if (run.marks() > 0) {
					studio.runs().takeBack(run.number(), SampleStudio.WHO);
					said.get(run.number()).pop();
				}
			}
			check(ids, told);
		}
		assertTrue(marks > 3, "something was said");
	}

	private void plan(List<Long> jobs, Random random) throws Exception {
		List<Long> picked = new ArrayList<>();
		for (Today.Group group : studio.today().cut()) {
			group.lines().stream().filter(line -> line.unplanned() > 0 && random.nextInt(3) > 0)
					.forEach(line -> picked.add(line.entry().number()));
		}
		if (!picked.isEmpty()) {
			studio.plan(picked.toArray(Long[]::new));
		}
	}

	private void mark(PlannedRun run, Random random) throws Exception {
		List<RunMark.Count> counts = new ArrayList<>();
		Map<Key, Integer> made = new HashMap<>();
		for (RunPiece piece : run.pieces()) {
			int count = random.nextInt(3) > 0 ? piece.left(Step.CUT) : random.nextInt(piece.left(Step.CUT) + 1);
			counts.add(new RunMark.Count(piece.job(), piece.of(), count, random.nextInt(2)));
			made.put(new Key(piece.number(), piece.of()), count);
		}
		TreeMap<StockColour, BigDecimal> used = new TreeMap<>(run.unused());
		used.replaceAll((of, amount) -> amount.add(BigDecimal.valueOf(random.nextInt(2))));
		studio.runs().mark(run.number(),
				new RunMark(Step.CUT, counts, used, Optional.of(BigDecimal.valueOf(1 + random.nextInt(90))), random.nextBoolean(), false,
						false, ""), SampleStudio.WHO);
		marks++;
		said.computeIfAbsent(run.number(), number -> new ArrayDeque<>())
				.push(new Said(made, used.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add)));
	}

	private void check(List<String> ids, String told) throws Exception {
		Map<Key, Integer> made = new HashMap<>();
		BigDecimal used = BigDecimal.ZERO;
		for (Deque<Said> each : said.values()) {
			for (Said one : each) {
				one.made().forEach((key, count) -> made.merge(key, count, Integer::sum));
				used = used.add(one.used());
			}
		}
		assertEquals(0, SHELF.add(SHELF).subtract(used)
				.compareTo(studio.onHand(SampleStudio.CARD).add(studio.onHand(SampleStudio.FILM))), told + ", stock");
		Today today = studio.today();
		Map<Key, TodayLine> lines = new HashMap<>();
		today.cut().forEach(group -> group.lines().forEach(line -> lines.put(new Key(line.entry().number(), line.of()), line)));
		for (StoredJob stored : studio.book().open(ids).values()) {
			Entry entry = stored.entry();
			long number = entry.number();
			boolean whole = true;
			for (Need need : Need.of(stored.job())) {
				Key key = new Key(number, need.of());
				int there = made.getOrDefault(key, 0);
				assertTrue(there <= entry.quantity(), told + ", made " + there + " of " + entry.quantity());
				whole &= there == entry.quantity();
				TodayLine line = lines.get(key);
				assertEquals(there < entry.quantity(), line != null, told + ", listed " + key);
				if (line != null) {
					assertEquals(entry.quantity(), line.made() + line.missing(), told);
					assertEquals(there, line.made(), told);
				}
			}
			assertEquals(whole ? Stage.CUT : Stage.APPROVED, entry.stage(), told + ", job " + number);
		}
		assertEquals(today.runs().stream().map(PlannedRun::number).toList(), studio.runs().all().stream()
				.filter(run -> run.state() != PlannedRun.State.DONE).map(PlannedRun::number).toList(), told);
	}
}

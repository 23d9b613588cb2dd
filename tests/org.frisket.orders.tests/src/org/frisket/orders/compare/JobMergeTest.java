package org.frisket.orders.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Placement;
import org.frisket.model.Wording;
import org.junit.jupiter.api.Test;

/** One job out of what two desks have made of it, whatever they have. {@code FRISKET_SEEDS} says how many desks there are. */
class JobMergeTest {

	private static final int SEEDS = Integer.parseInt(System.getenv().getOrDefault("FRISKET_SEEDS", "20"));
	private static final int STEPS = 12;

	/** With all that leads from one thing to another, and what this version does not know. */
	private static final String START = """
			<?xml version="1.0" encoding="UTF-8"?>
			<frisket:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
			xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:frisket="urn:frisket:job:1" id="j" number="12" \
			title="Ferry banner" mood="festive">
			  <layers id="l1" name="Front" grain="long">
			    <elements xsi:type="frisket:Wording" id="e1" text="Ferry" height="40" slant="9">
			      <flourishes letter="3" dx="0.2"/>
			      <operations kind="cut" speedup="2"/>
			    </elements>
			    <elements xsi:type="frisket:Outline" id="e2" pathData="M0 0L1 0L1 1Z"/>
			    <elements xsi:type="frisket:Outline" id="e4" pathData="M0 0L3 0L1 1Z"/>
			    <elements xsi:type="frisket:Wording" id="e6" text="Jubilee" height="20" path="e4" flow="path"/>
			  </layers>
			  <layers id="l2" name="Middle">
			    <elements xsi:type="frisket:Combination" id="e7" parts="e2 e4"/>
			    <elements xsi:type="frisket:Outline" id="e8" pathData="M0 0L9 0L1 1Z"/>
			  </layers>
			  <layers id="l3" name="Back">
			    <elements xsi:type="frisket:Mat" id="e3" behind="e1 e6" distance="3" sheen="satin"/>
			    <elements xsi:type="frisket:Mat" id="e5" behind="e3" distance="4"/>
			  </layers>
			  <groups id="g1" elements="e1">
			    <groups id="g2" elements="e2 e4"/>
			  </groups>
			  <guides across="true" at="12.5"/>
			  <guides across="true" at="20"/>
			  <sheets id="s1" stock="card" width="300" height="200">
			    <placements part="e1" x="10" y="10"/>
			    <placements part="e3" x="80" y="10"/>
			    <placements part="e3" copy="2" x="150" y="10"/>
			  </sheets>
			  <guests job="guest-1" number="9" title="Gift tags"/>
			  <laying width="300" height="200"/>
			</frisket:Job>
			""";

	private static Job start() throws IOException {
		return JobFile.load(START.getBytes(StandardCharsets.UTF_8), "ferry");
	}

	private static Job worked(long seed) throws IOException {
		Job job = start();
		new RandomDesk(seed).work(job, STEPS);
		return job;
	}

	private static String text(Job job) throws IOException {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	private static Job merge(Job base, Job mine, Job theirs) throws IOException {
		return JobMerge.of(JobComparison.of(base, mine, theirs), Map.of());
	}

	@Test
	void whatOneSideAloneHasDoneIsTakenToTheByte() throws IOException {
		for (int seed = 1; seed <= SEEDS; seed++) {
			Job done = worked(seed);
			assertEquals(text(done), text(merge(start(), done, start())), "mine, seed " + seed);
			assertEquals(text(done), text(merge(start(), start(), done)), "theirs, seed " + seed);
			assertEquals(text(done), text(merge(start(), done, done)), "both, seed " + seed);
			assertFalse(JobComparison.of(start(), done, done).touches(), "seed " + seed);
		}
	}

	@Test
	void whateverBothHaveDoneAndIsChosenTheJobIsSound() throws IOException {
		int touched = 0;
		for (int seed = 1; seed <= SEEDS; seed++) {
			Job mine = worked(seed);
			Job theirs = worked(-seed);
			String mineBefore = text(mine);
			JobComparison comparison = JobComparison.of(start(), mine, theirs);
			Map<String, Side> choices = new HashMap<>();
			Random random = new Random(seed);
			for (Row row : comparison.rows()) {
				assertTrue(row.mine().isAny() || row.theirs().isAny(), row::toString);
				if (row.touches()) {
					touched++;
					choices.put(row.key(), random.nextBoolean() ? Side.MINE : Side.THEIRS);
				}
			}
			check(JobMerge.of(comparison, Map.of()), "seed " + seed);
			check(JobMerge.of(comparison, choices), "seed " + seed + " " + choices);
			assertEquals(mineBefore, text(mine), "the job itself stays as it is");
		}
		assertTrue(touched > SEEDS, "there is something to choose: " + touched);
	}

	@Test
	void workOnDifferentThingsComesToTheSameAsIfOneDeskHadDoneBoth() throws IOException {
		for (int seed = 1; seed <= SEEDS; seed++) {
			long half = seed;
			RandomDesk one = new RandomDesk(seed, each -> isEven(each, half));
			RandomDesk other = new RandomDesk(-seed, each -> !isEven(each, half));
			Job mine = start();
			one.change(mine, STEPS);
			Job theirs = start();
			other.change(theirs, STEPS);
			Job both = start();
			new RandomDesk(seed, each -> isEven(each, half)).change(both, STEPS);
			new RandomDesk(-seed, each -> !isEven(each, half)).change(both, STEPS);
			assertFalse(JobComparison.of(start(), mine, theirs).touches(), "seed " + seed);
			assertEquals(text(both), text(merge(start(), mine, theirs)), "seed " + seed);
			assertEquals(text(both), text(merge(start(), theirs, mine)), "the other way round, seed " + seed);
		}
	}

	private static boolean isEven(EObject object, long seed) {
		return (String.valueOf(EcoreUtil.getID(object)).hashCode() + seed) % 2 == 0;
	}

	@Test
	void itDoesNotMatterWhoIsFirstWhereNothingHasToBeChosen() throws IOException {
		int alike = 0;
		for (int seed = 1; seed <= SEEDS; seed++) {
			Job mine = start();
			new RandomDesk(seed).work(mine, 2);
			Job theirs = start();
			new RandomDesk(-seed).work(theirs, 2);
			if (!JobComparison.of(start(), mine, theirs).touches()) {
				assertFalse(JobComparison.of(start(), theirs, mine).touches(), "seed " + seed);
				assertEquals(canonical(merge(start(), mine, theirs)), canonical(merge(start(), theirs, mine)), "seed " + seed);
				alike++;
			}
		}
		assertTrue(alike > SEEDS / 2, "most work is in nobody's way: " + alike);
	}

	/** Ids and places of parts in their lists mean nothing. */
	private static String canonical(Job job) throws IOException {
		Map<String, String> ids = new HashMap<>();
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			EObject each = all.next();
			if (EcoreUtil.getID(each) != null) {
				ids.put(EcoreUtil.getID(each), "n" + (ids.size() + 1));
				EcoreUtil.setID(each, ids.get(EcoreUtil.getID(each)));
			}
		}
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			if (all.next() instanceof Placement placement) {
				placement.setPart(ids.getOrDefault(placement.getPart(), placement.getPart()));
			}
		}
		return text(job);
	}

	private static void check(Job job, String after) throws IOException {
		Set<String> ids = new HashSet<>();
		Set<Element> grouped = new HashSet<>();
		Set<String> laid = new HashSet<>();
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			EObject each = all.next();
			EAttribute id = each.eClass().getEIDAttribute();
			if (id != null) {
				assertNotNull(each.eGet(id), after + ": no id of " + each);
				assertTrue(ids.add((String) each.eGet(id)), after + ": two of id " + each.eGet(id));
			}
			for (EObject other : each.eCrossReferences()) {
				assertSame(job, EcoreUtil.getRootContainer(other), after + ": " + each + " leads out of the job to " + other);
			}
			if (each instanceof Element element && Jobs.isFollower(element)) {
				assertTrue(Jobs.sources(element).stream().noneMatch(source -> Jobs.leadsTo(source, element)), after + ": a ring");
				assertFalse(Jobs.sources(element).isEmpty(), after + ": nothing to follow");
			}
			if (each instanceof Group group) {
				assertTrue(group.getElements().size() + group.getGroups().size() > 1, after + ": no group: " + group);
				group.getElements().forEach(element -> assertTrue(grouped.add(element), after + ": in two groups: " + element));
			}
			if (each instanceof Placement placement) {
				assertTrue(laid.add(placement.getPart() + " " + placement.getCopy() + " " + placement.getJob()),
						after + ": laid twice: " + placement);
			}
		}
		assertEquals(text(job), text(JobFile.load(JobFile.toBytes(job), "merged")), after);
	}

	@Test
	void whatBothHaveAddedUnderOneIdIsBothThere() throws IOException {
		Job mine = start();
		Element star = Jobs.addOutline(mine.getLayers().get(0), "M0 0L5 0L0 5Z");
		Jobs.addMat(mine.getLayers().get(2), 2, List.of(star));
		Jobs.addPlacement(mine.getSheets().get(0), star.getId() + "#1", 200, 100, 0);
		Job theirs = start();
		Element wave = Jobs.addOutline(theirs.getLayers().get(0), "M0 0L7 0L0 7Z");
		Jobs.addMat(theirs.getLayers().get(2), 2, List.of(wave));
		assertEquals(star.getId(), wave.getId());
		JobComparison comparison = JobComparison.of(start(), mine, theirs);
		assertFalse(comparison.touches());
		Job merged = JobMerge.of(comparison, Map.of());
		assertEquals(12, Jobs.elements(merged).size());
		Element renamed = Jobs.elements(merged).stream().filter(each -> each instanceof org.frisket.model.Outline outline
				&& outline.getPathData().equals("M0 0L5 0L0 5Z")).findFirst().orElseThrow();
		assertEquals(wave.getId(), Jobs.elements(merged).stream().filter(each -> each instanceof org.frisket.model.Outline outline
				&& outline.getPathData().equals("M0 0L7 0L0 7Z")).findFirst().orElseThrow().getId());
		assertEquals(1, Jobs.matsOf(renamed).size());
		assertTrue(merged.getSheets().get(0).getPlacements().stream()
				.anyMatch(each -> each.getPart().equals(renamed.getId() + "#1")));
	}

	@Test
	void differentFeaturesOfOneElementAreBothTaken() throws IOException {
		Job mine = start();
		wording(mine).setText("Ferries");
		Job theirs = start();
		wording(theirs).setHeight(42);
		Job merged = merge(start(), mine, theirs);
		assertEquals("Ferries", wording(merged).getText());
		assertEquals(42, wording(merged).getHeight());
	}

	private static Wording wording(Job job) {
		return (Wording) Jobs.element(job, "e1").orElseThrow();
	}

	@Test
	void whereBothHaveChangedTheSameTheirsHoldsUnlessMineIsChosen() throws IOException {
		Job mine = start();
		wording(mine).setText("Ferries");
		Job theirs = start();
		wording(theirs).setText("Steamer");
		JobComparison comparison = JobComparison.of(start(), mine, theirs);
		Row row = comparison.rows().get(0);
		assertTrue(row.touches());
		assertEquals("Steamer", wording(JobMerge.of(comparison, Map.of())).getText());
		assertEquals("Ferries", wording(JobMerge.of(comparison, Map.of(row.key(), Side.MINE))).getText());
	}

	@Test
	void nudgedLettersAreNotTakenIntoAnotherText() throws IOException {
		Job mine = start();
		wording(mine).getNudges().add(org.frisket.model.FrisketFactory.INSTANCE.createNudge());
		Job theirs = start();
		wording(theirs).setText("Steamer");
		JobComparison comparison = JobComparison.of(start(), mine, theirs);
		assertTrue(comparison.touches());
		assertTrue(wording(JobMerge.of(comparison, Map.of())).getNudges().isEmpty());
	}

	@Test
	void whatOneRemovesAndTheOtherFollowsHasToBeChosen() throws IOException {
		Job mine = start();
		Jobs.addMat(mine.getLayers().get(2), 6, List.of(Jobs.element(mine, "e8").orElseThrow()));
		Job theirs = start();
		Layer middle = theirs.getLayers().get(1);
		middle.getElements().remove(1);
		JobComparison comparison = JobComparison.of(start(), mine, theirs);
		Row row = comparison.rows().stream().filter(Row::touches).findFirst().orElseThrow();
		assertEquals("Element e8", row.key());
		assertEquals(Difference.Kind.REMOVED, row.theirs().kind());
		Job kept = JobMerge.of(comparison, Map.of("Element e8", Side.MINE));
		assertEquals(1, Jobs.matsOf(Jobs.element(kept, "e8").orElseThrow()).size());
		Job gone = JobMerge.of(comparison, Map.of());
		assertEquals(text(theirs), text(gone), "the mat has nothing left to follow");
	}

	@Test
	void eachFollowingTheOtherIsUndoneByChoice() throws IOException {
		Job base = start();
		Mat one = Jobs.addMat(base.getLayers().get(2), 1, List.of(wording(base)));
		Mat other = Jobs.addMat(base.getLayers().get(2), 1, List.of(wording(base)));
		byte[] bytes = JobFile.toBytes(base);
		Job mine = JobFile.load(bytes, "mine");
		mat(mine, one).getBehind().add(mat(mine, other));
		Job theirs = JobFile.load(bytes, "theirs");
		mat(theirs, other).getBehind().add(mat(theirs, one));
		JobComparison comparison = JobComparison.of(base, mine, theirs);
		assertTrue(comparison.touches());
		for (Side first : Side.values()) {
			for (Side second : Side.values()) {
				check(JobMerge.of(comparison, Map.of("Element " + one.getId(), first, "Element " + other.getId(), second)),
						first + " " + second);
			}
		}
	}

	private static Mat mat(Job job, Mat like) {
		return (Mat) Jobs.element(job, like.getId()).orElseThrow();
	}
}

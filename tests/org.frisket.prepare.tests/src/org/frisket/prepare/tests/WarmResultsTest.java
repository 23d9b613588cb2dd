package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Alignment;
import org.frisket.model.Flow;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;

/** What has been made before never shows: after any edits a job comes to what it comes to in a fresh process. */
class WarmResultsTest {

	private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz    ";

	private static Job job(String text, boolean joined) {
		Job job = Jobs.create("warm", "Warm");
		Layer layer = Jobs.addLayer(job, "Wording");
		Wording wording = Jobs.addWording(layer, text, 20);
		wording.setFont(Jobs.font("Dancing Script", null, null, null));
		wording.setJoined(joined);
		wording.setTouch(0.3);
		Jobs.addOperation(wording, OperationKind.CUT);
		for (double distance : new double[] { 1.5, 3, 9 }) {
			Mat mat = Jobs.addMat(Jobs.addLayer(job, "Mat"), distance, List.of(wording));
			mat.setHoles(distance > 5 ? HoleRule.FILL : HoleRule.KEEP);
			Jobs.addOperation(mat, OperationKind.CUT);
		}
		return job;
	}

	private static Wording wording(Job job) {
		return (Wording) Jobs.elements(job).get(0);
	}

	/** A letter or a blank put in, taken out or exchanged, now and then a line end, or all moved to another place. */
	private static void edit(Wording wording, Random random) {
		StringBuilder text = new StringBuilder(wording.getText());
		int at = random.nextInt(text.length());
		char letter = random.nextInt(12) == 0 ? '\n' : LETTERS.charAt(random.nextInt(LETTERS.length()));
		switch (random.nextInt(7)) {
		case 0, 1 -> text.insert(at, letter);
		case 2, 3 -> text.deleteCharAt(at).append(text.length() == 0 ? "x" : "");
		case 4, 5 -> text.setCharAt(at, letter);
		default -> wording.setTransform(Matrix.translation(random.nextInt(50) / 7.0, random.nextInt(50) / 3.0));
		}
		wording.setText(text.toString());
	}

	/** All coordinates in full. */
	private static List<String> bytes(PreparedJob prepared) {
		return prepared.elements().map(PreparedElement::region).map(region -> region.toOutline().contours().toString())
				.toList();
	}

	@Test
	void oneJoinedLineComesToWhatItComesToAfresh() {
		assertWarmIsCold(61, "harbour lane", true);
	}

	@Test
	void joinedLinesComeToWhatTheyComeToAfresh() {
		assertWarmIsCold(62, "ferry bells\ntags and cards\nharbour lane", true);
	}

	@Test
	void centredJoinedLinesComeToWhatTheyComeToAfresh() {
		Job job = job("ferry bells\ntags and cards\nharbour lane", true);
		wording(job).setAlignment(Alignment.CENTRE);
		assertWarmIsCold(64, job);
	}

	@Test
	void looseLettersComeToWhatTheyComeToAfresh() {
		assertWarmIsCold(63, "lane\npaper", false);
	}

	@Test
	void stackedJoinedLettersComeToWhatTheyComeToAfresh() {
		Job job = job("ferry bells\nlane", true);
		wording(job).setFlow(Flow.STACKED);
		assertWarmIsCold(65, job);
	}

	@Test
	void joinedLettersOnAnArcComeToWhatTheyComeToAfresh() {
		Job job = job("ferry bells", true);
		wording(job).setFlow(Flow.ARC);
		wording(job).setArcRadius(90);
		assertWarmIsCold(66, job);
	}

	private static void assertWarmIsCold(long seed, String text, boolean joined) {
		assertWarmIsCold(seed, job(text, joined));
	}

	private static void assertWarmIsCold(long seed, Job job) {
		Random random = new Random(seed);
		JobPreparer warm = new JobPreparer(FontLibraries.installed());
		Set<List<String>> seen = new HashSet<>();
		for (int i = 0; i < 5; i++) {
			for (int k = 0; k < 2; k++) {
				edit(wording(job), random);
				warm.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
			}
			List<String> warmly = bytes(warm.prepare(job, Tolerance.DEFAULT, Monitor.NONE));
			List<String> coldly = bytes(
					new JobPreparer(FontLibraries.installed()).prepare(job, Tolerance.DEFAULT, Monitor.NONE));
			assertTrue(coldly.equals(warmly),
					"seed " + seed + ", after " + (i + 1) + " times two edits: " + wording(job).getText());
			seen.add(warmly);
		}
		// a blank at the end of a line changes nothing
		assertTrue(seen.size() > 2, "the edits do change the job");
	}
}

package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Nudge;
import org.frisket.model.TextChange.Part;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Nudges and spans while the text changes, and nudging itself. */
class LetterMarksTest {

	private static final String[] LETTERS = { "a", "a", "e\u0301", "b", " ", "😀", "ب", "ت", "क्ष", "कि" };

	private Job job;
	private Wording wording;

	@BeforeEach
	void aWordingOfAJob() {
		job = Jobs.create("letters", "Letters");
		wording = FrisketFactory.INSTANCE.createWording();
		wording.setText("ferry");
		wording.setHeight(20);
		Jobs.addLayer(job, "Card").getElements().add(wording);
	}

	private void nudge(int index, double dx) {
		NudgeLetters.move(wording, NudgeLetters.each(List.of(new Part(index, index + 1)), NudgeLetters.By.move(dx, 0)))
				.apply();
	}

	private void span(int start, int end) {
		TextSpan span = FrisketFactory.INSTANCE.createTextSpan();
		span.setStart(start);
		span.setEnd(end);
		span.setHeight(9);
		wording.getSpans().add(span);
	}

	private Map<Integer, Double> nudged() {
		Map<Integer, Double> nudged = new LinkedHashMap<>();
		wording.getNudges().forEach(nudge -> nudged.put(nudge.getIndex(), nudge.getDx()));
		return nudged;
	}

	private List<String> spanned() {
		return wording.getSpans().stream().map(span -> wording.getText().substring(span.getStart(), span.getEnd()))
				.toList();
	}

	private void turnOver(Edit edit) throws IOException {
		byte[] before = JobFile.toBytes(job);
		edit.apply();
		byte[] after = JobFile.toBytes(job);
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		edit.redo();
		assertArrayEquals(after, JobFile.toBytes(job));
	}

	@Test
	void otherTextKeepsNudgesAndSpansAtTheirLetters() throws IOException {
		nudge(0, 1);
		nudge(4, 2);
		span(1, 4);
		turnOver(ChangeWording.text(wording, "The ferries"));
		assertEquals(Map.of(4, 1.0), nudged());
		assertEquals(List.of("err"), spanned());
		turnOver(ChangeWording.text(wording, null));
		assertEquals(Map.of(), nudged());
		assertEquals(List.of(), spanned());
	}

	@Test
	void typingKeepsThemKeyByKeyAndGoesBackInOneStep() throws IOException {
		nudge(2, 1);
		nudge(3, 2);
		span(3, 5);
		Nudge second = wording.getNudges().get(1);
		byte[] before = JobFile.toBytes(job);
		TypeWording edit = TypeWording.into(wording, "ferrry", 3);
		edit.apply();
		assertEquals(Map.of(3, 1.0, 4, 2.0), nudged());
		assertEquals(List.of("ry"), spanned());
		edit.retype("ferry", 2);
		assertEquals(Map.of(2, 1.0, 3, 2.0), nudged());
		edit.retype("fery", 2);
		assertEquals(Map.of(2, 2.0), nudged());
		edit.retype("fer", 3);
		assertEquals(List.of("r"), spanned());
		edit.retype("fe", 2);
		assertEquals(Map.of(), nudged());
		assertEquals(List.of(), spanned());
		byte[] after = JobFile.toBytes(job);
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
		assertSame(second, wording.getNudges().get(1));
		edit.redo();
		assertArrayEquals(after, JobFile.toBytes(job));
		edit.undo();
		assertArrayEquals(before, JobFile.toBytes(job));
	}

	/** Each letter carries a tag beside the model; its nudge is known by a distance of its own. */
	@Test
	void nudgedLettersKeepTheirNudgesThroughAnyTyping() throws IOException {
		Random random = new Random(21);
		for (int round = 0; round < 150; round++) {
			aWordingOfAJob();
			List<String> letters = new ArrayList<>();
			List<Double> tags = new ArrayList<>();
			for (int i = 1 + random.nextInt(8); i > 0; i--) {
				letters.add(LETTERS[random.nextInt(LETTERS.length)]);
				tags.add(0.0);
			}
			wording.setText(String.join("", letters));
			for (int i = 0; i < letters.size(); i++) {
				if (random.nextBoolean()) {
					tags.set(i, i + 1.0);
					nudge(start(letters, i), i + 1.0);
				}
			}
			byte[] before = JobFile.toBytes(job);
			TypeWording edit = null;
			for (int key = 0; key < 8; key++) {
				int from = random.nextInt(letters.size() + 1);
				int to = Math.min(letters.size(), from + random.nextInt(3));
				boolean types = random.nextBoolean() || from == to;
				letters.subList(from, to).clear();
				tags.subList(from, to).clear();
				if (types) {
					// not one that was there, or the text could not tell a letter from its like
					letters.add(from, Character.toString(0x10000 + key + 100 * round));
					tags.add(from, 0.0);
				}
				String text = String.join("", letters);
				int caret = start(letters, types ? from + 1 : from);
				if (edit == null) {
					edit = TypeWording.into(wording, text, caret);
					edit.apply();
				} else {
					edit.retype(text, caret);
				}
				Map<Integer, Double> expected = new LinkedHashMap<>();
				for (int i = 0; i < letters.size(); i++) {
					if (tags.get(i) > 0) {
						expected.put(start(letters, i), tags.get(i));
					}
				}
				assertEquals(expected, nudged(), text);
			}
			byte[] after = JobFile.toBytes(job);
			edit.undo();
			assertArrayEquals(before, JobFile.toBytes(job));
			edit.redo();
			assertArrayEquals(after, JobFile.toBytes(job));
		}
	}

	private static int start(List<String> letters, int number) {
		return letters.subList(0, number).stream().mapToInt(String::length).sum();
	}

	@Test
	void nudgesAddUpAndAWholeTurnIsNone() throws IOException {
		List<Part> letters = List.of(new Part(0, 1), new Part(2, 4));
		turnOver(NudgeLetters.move(wording, NudgeLetters.each(letters, NudgeLetters.By.move(0.1, 0.2))));
		turnOver(NudgeLetters.move(wording, NudgeLetters.each(letters, NudgeLetters.By.move(0.2, -0.2))));
		turnOver(NudgeLetters.turn(wording, letters, 170));
		turnOver(NudgeLetters.turn(wording, letters, 100));
		turnOver(NudgeLetters.scale(wording, letters, 2));
		assertEquals(new NudgeLetters.By(0.3, 0, -90, 2), NudgeLetters.of(wording, letters.get(1)));
		assertEquals(2, wording.getNudges().size());
		turnOver(NudgeLetters.turn(wording, letters, 90));
		turnOver(NudgeLetters.scale(wording, letters, 0.5));
		turnOver(NudgeLetters.move(wording, NudgeLetters.each(letters, NudgeLetters.By.move(-0.3, 0))));
		assertEquals(List.of(), wording.getNudges());
	}

	@Test
	void nudgesOfALigaturesCharactersBecomeOne() throws IOException {
		nudge(2, 1);
		nudge(3, 2);
		turnOver(NudgeLetters.turn(wording, List.of(new Part(2, 4)), 10));
		assertEquals(Map.of(2, 3.0), nudged());
		turnOver(NudgeLetters.back(wording, List.of(new Part(2, 4), new Part(0, 1))));
		assertEquals(Map.of(), nudged());
	}

	@Test
	void senselessNudgesAreNone() {
		List<Part> letter = List.of(new Part(0, 1));
		for (double bad : new double[] { 0, -1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertFalse(NudgeLetters.scale(wording, letter, bad).canApply(), "scale " + bad);
		}
		assertFalse(NudgeLetters.turn(wording, letter, Double.NaN).canApply());
		assertFalse(NudgeLetters.turn(wording, letter, 720).canApply());
		assertFalse(NudgeLetters.turn(wording, List.of(), 5).canApply());
		assertFalse(NudgeLetters.turn(wording, List.of(new Part(4, 6)), 5).canApply());
		assertFalse(NudgeLetters.turn(wording, List.of(new Part(-1, 1)), 5).canApply());
		assertFalse(NudgeLetters.back(wording, letter).canApply());
		NudgeLetters.scale(wording, letter, 1e9).apply();
		assertEquals(NudgeLetters.GREATEST_SCALE, NudgeLetters.of(wording, letter.get(0)).scale());
		assertFalse(NudgeLetters.scale(wording, letter, 2).canApply());
		wording.setLocked(true);
		assertFalse(NudgeLetters.turn(wording, letter, 5).canApply());
	}
}

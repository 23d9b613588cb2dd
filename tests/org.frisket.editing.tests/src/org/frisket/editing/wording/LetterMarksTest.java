package org.frisket.editing.wording;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;

import org.frisket.editing.Edit;
import org.frisket.model.Bridge;
import org.frisket.model.FrisketFactory;
import org.frisket.model.IslandBridges;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Nudge;
import org.frisket.model.TextChange.Part;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Nudges, spans and bridges while the text changes, and nudging itself. */
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

	private void bridge(int one, int other, double width) {
		Bridge bridge = FrisketFactory.INSTANCE.createBridge();
		bridge.setOne(one);
		bridge.setOther(other);
		bridge.setWidth(width);
		wording.getBridges().add(bridge);
	}

	private void island(int index) {
		IslandBridges island = FrisketFactory.INSTANCE.createIslandBridges();
		island.setIndex(index);
		wording.getIslands().add(island);
	}

	private List<String> bridged() {
		return wording.getBridges().stream().map(b -> b.getOne() + "-" + b.getOther() + " " + b.getWidth()).toList();
	}

	private List<Integer> islands() {
		return wording.getIslands().stream().map(IslandBridges::getIndex).toList();
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

	@Test
	void bridgesGoWithBothTheirLettersAndIslandsWithTheirOne() throws IOException {
		bridge(0, 1, 1);
		bridge(3, 4, 2);
		island(1);
		island(4);
		turnOver(ChangeWording.text(wording, "The ferr"));
		assertEquals(List.of("4-5 1.0"), bridged());
		assertEquals(List.of(5), islands());
		turnOver(ChangeWording.text(wording, null));
		assertEquals(List.of(), bridged());
		assertEquals(List.of(), islands());
	}

	/** Letters are known by objects beside the model, bridges by a width of their own. */
	@Test
	void bridgesKeepToTheirLettersThroughAnyTyping() throws IOException {
		Random random = new Random(22);
		int kept = 0;
		int gone = 0;
		for (int round = 0; round < 150; round++) {
			aWordingOfAJob();
			List<Letter> letters = new ArrayList<>();
			for (int i = 2 + random.nextInt(8); i > 0; i--) {
				letters.add(new Letter(LETTERS[random.nextInt(LETTERS.length)]));
			}
			wording.setText(Letter.text(letters));
			List<Letter> ones = new ArrayList<>();
			List<Letter> others = new ArrayList<>();
			List<Letter> isles = new ArrayList<>();
			for (int i = 0; i < letters.size(); i++) {
				int other = random.nextInt(letters.size());
				if (other != i && random.nextBoolean()) {
					bridge(Letter.start(letters, letters.get(i)), Letter.start(letters, letters.get(other)), ones.size());
					ones.add(letters.get(i));
					others.add(letters.get(other));
				}
				if (random.nextBoolean()) {
					island(Letter.start(letters, letters.get(i)));
					isles.add(letters.get(i));
				}
			}
			byte[] before = JobFile.toBytes(job);
			TypeWording edit = null;
			for (int key = 0; key < 6; key++) {
				int from = random.nextInt(letters.size() + 1);
				int to = Math.min(letters.size(), from + random.nextInt(3));
				boolean types = random.nextBoolean() || from == to;
				letters.subList(from, to).clear();
				if (types) {
					letters.add(from, new Letter(Character.toString(0x10000 + key + 100 * round)));
				}
				String text = Letter.text(letters);
				int caret = Letter.text(letters.subList(0, types ? from + 1 : from)).length();
				if (edit == null) {
					edit = TypeWording.into(wording, text, caret);
					edit.apply();
				} else {
					edit.retype(text, caret);
				}
				List<String> expected = new ArrayList<>();
				for (int i = 0; i < ones.size(); i++) {
					int one = Letter.start(letters, ones.get(i));
					int other = Letter.start(letters, others.get(i));
					if (one >= 0 && other >= 0) {
						expected.add(one + "-" + other + " " + (double) i);
					}
				}
				assertEquals(expected, bridged(), text);
				assertEquals(isles.stream().map(isle -> Letter.start(letters, isle)).filter(at -> at >= 0).toList(),
						islands(), text);
				kept += expected.size();
				gone += ones.size() - expected.size();
			}
			byte[] after = JobFile.toBytes(job);
			edit.undo();
			assertArrayEquals(before, JobFile.toBytes(job));
			edit.redo();
			assertArrayEquals(after, JobFile.toBytes(job));
		}
		assertTrue(kept > 100 && gone > 100, kept + " kept, " + gone + " gone");
	}

	/** Not a record: two of the same characters are two letters. */
	private static final class Letter {

		private final String characters;

		Letter(String characters) {
			this.characters = characters;
		}

		static String text(List<Letter> letters) {
			return letters.stream().map(letter -> letter.characters).collect(Collectors.joining());
		}

		/** -1 if it is gone. */
		static int start(List<Letter> letters, Letter letter) {
			int number = letters.indexOf(letter);
			return number < 0 ? -1 : text(letters.subList(0, number)).length();
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

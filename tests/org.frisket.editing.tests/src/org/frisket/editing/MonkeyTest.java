package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

import org.frisket.editing.arranging.MoveElements;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.junit.jupiter.api.Test;

/** Any edits in any order: the job stays sound, and undo leads back to its first byte. */
class MonkeyTest {

	private static final int SEEDS = 4;
	private static final int ACTIONS = 2000;
	/** How often each edit is made at least, in all. */
	private static final int ENOUGH = 12;
	private static final int ACTIONS_PER_ROUND_TRIP = 25;

	/** With a group, a guide, a lock, and attributes that this version does not know. */
	private static final String START = """
			<?xml version="1.0" encoding="UTF-8"?>
			<frisket:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
			xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:frisket="urn:frisket:job:1" id="j" title="Tags">
			  <layers id="l1" name="Front" grain="long">
			    <elements xsi:type="frisket:Wording" id="e1" text="For you" height="12" slant="9">
			      <flourishes letter="3" dx="0.2"/>
			      <operations kind="cut"/>
			    </elements>
			    <elements xsi:type="frisket:Outline" id="e2" pathData="M0 0L1 0L1 1Z"/>
			    <elements xsi:type="frisket:Outline" id="e4" pathData="M0 0L3 0L1 1Z"/>
			  </layers>
			  <layers id="l2" name="Back">
			    <elements xsi:type="frisket:Mat" id="e3" behind="e1 e2" distance="3" sheen="satin"/>
			    <elements xsi:type="frisket:Mat" id="e5" behind="e3" distance="4"/>
			  </layers>
			  <groups id="g1" elements="e1">
			    <groups id="g2" elements="e2 e4"/>
			  </groups>
			  <guides across="true" at="12.5"/>
			</frisket:Job>
			""";

	@Test
	void anyEditsLeaveTheJobSoundAndUndoLeadsBackToTheFirstByte() throws IOException {
		Map<Class<?>, Integer> applied = new HashMap<>();
		for (int seed = 1; seed <= SEEDS; seed++) {
			Job job = JobFile.load(START.getBytes(StandardCharsets.UTF_8), "tags");
			String first = text(job);
			EditHistory history = new EditHistory();
			play(job, history, new Random(seed), "seed " + seed, applied);
			redoAll(history);
			String last = text(job);
			while (history.canUndo()) {
				history.undo();
				SoundJob.check(job, "seed " + seed + ", undo before " + history.redoName());
			}
			assertEquals(first, text(job), "seed " + seed);
			redoAll(history);
			assertEquals(last, text(job), "seed " + seed);
		}
		assertEquals(RandomEdits.classes(), applied.keySet(), "edits that were applied at all");
		applied.forEach((type, times) -> assertTrue(times >= ENOUGH, type + " was applied " + times + " times"));
	}

	private static void play(Job job, EditHistory history, Random random, String where,
			Map<Class<?>, Integer> applied) throws IOException {
		for (int action = 1; action <= ACTIONS;) {
			String after = where + ", action " + action;
			int dice = random.nextInt(10);
			if (dice == 0 && history.canUndo()) {
				history.undo();
			} else if (dice == 1 && history.canRedo()) {
				history.redo();
			} else {
				Edit edit = RandomEdits.any(job, random);
				if (edit == null || !edit.canApply()) {
					continue;
				}
				after += ", " + edit.getClass().getSimpleName();
				history.execute(edit);
				applied.merge(edit.getClass(), 1, Integer::sum);
			}
			SoundJob.check(job, after);
			if (action % ACTIONS_PER_ROUND_TRIP == 0) {
				SoundJob.checkRoundTrip(job, after);
			}
			action++;
		}
	}

	private static void redoAll(EditHistory history) {
		while (history.canRedo()) {
			history.redo();
		}
	}

	private static String text(Job job) throws IOException {
		return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
	}

	@Test
	void everyEditIsAmongThem() throws Exception {
		Set<Class<?>> edits = new HashSet<>();
		for (String name : classesBeside(Edit.class)) {
			Class<?> type = Class.forName(name);
			if (Edit.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers())) {
				edits.add(type);
			}
		}
		assertTrue(edits.contains(MoveElements.class), "the classes are found: " + edits);
		assertEquals(edits, RandomEdits.classes(), "RandomEdits has a line for each");
	}

	/** Names of the classes of its package and of the rooms in it, in the folder or jar it comes from. */
	private static Set<String> classesBeside(Class<?> type) throws Exception {
		URI place = type.getProtectionDomain().getCodeSource().getLocation().toURI();
		Path path = Path.of(place);
		if (Files.isDirectory(path)) {
			return classesIn(path, type);
		}
		try (FileSystem jar = FileSystems.newFileSystem(path)) {
			return classesIn(jar.getPath("/"), type);
		}
	}

	private static Set<String> classesIn(Path root, Class<?> type) throws IOException {
		Set<String> names = new HashSet<>();
		try (Stream<Path> files = Files.walk(root.resolve(type.getPackageName().replace('.', '/')))) {
			files.map(file -> root.relativize(file).toString().replace('/', '.'))
					.filter(name -> name.endsWith(".class") && !name.contains("$") && !name.endsWith("-info.class"))
					.forEach(name -> names.add(name.substring(0, name.length() - 6)));
		}
		return names;
	}
}

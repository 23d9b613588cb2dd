package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import org.frisket.model.Element;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.junit.jupiter.api.Test;

/** Long random sequences of everything that is done to the stack and to groups. */
class StackHistoryTest {

	private static final int ACTIONS = 500;

	@Test
	void undoLeadsBackToTheFirstBytesAndTheJobIsAlwaysWhole() throws IOException {
		Map<String, Integer> applied = new TreeMap<>();
		for (long seed : new long[] { 3, 29, 1871, 40_507, 77_777 }) {
			check(seed, applied);
		}
		assertEquals(20, applied.size(), applied.toString());
		applied.forEach((name, count) -> assertTrue(count >= 5, applied.toString()));
	}

	private static void check(long seed, Map<String, Integer> applied) throws IOException {
		Random random = new Random(seed);
		Job job = start();
		byte[] first = JobFile.toBytes(job);
		EditHistory history = new EditHistory();
		for (int i = 0; i < ACTIONS; i++) {
			int dice = random.nextInt(8);
			if (dice == 0) {
				history.undo();
			} else if (dice == 1) {
				history.redo();
			} else {
				Edit edit = edit(job, random);
				if (edit.canApply()) {
					applied.merge(edit.getClass().getSimpleName(), 1, Integer::sum);
				}
				history.execute(edit);
			}
			assertWhole(job, "seed " + seed + ", action " + i);
		}
		byte[] last = JobFile.toBytes(job);
		int steps = history.names().size();
		while (history.canUndo()) {
			history.undo();
		}
		assertArrayEquals(first, JobFile.toBytes(job), "seed " + seed);
		for (int i = 0; i < steps; i++) {
			history.redo();
		}
		assertArrayEquals(last, JobFile.toBytes(job), "seed " + seed);
	}

	private static Job start() {
		Job job = Jobs.create("tags", "Gift tags");
		for (int i = 0; i < 3; i++) {
			Layer layer = Jobs.addLayer(job, "Layer " + i);
			for (int j = 0; j < 3; j++) {
				Jobs.addOutline(layer, "M0 0L0 " + (j + 1) + "L9 9Z");
			}
		}
		Jobs.addMat(job.getLayers().get(0), 3, Jobs.elements(job).subList(5, 7));
		return job;
	}

	/** Every group holds at least two things, every element is in one group at most, and the file says the same. */
	private static void assertWhole(Job job, String when) throws IOException {
		Set<Element> elements = new HashSet<>(Jobs.elements(job));
		Set<Element> grouped = new HashSet<>();
		Set<String> ids = new HashSet<>();
		for (Group group : Jobs.groups(job)) {
			assertTrue(group.getElements().size() + group.getGroups().size() > 1, when);
			assertTrue(ids.add(group.getId()), when);
			for (Element element : group.getElements()) {
				assertTrue(elements.contains(element), when);
				assertTrue(grouped.add(element), when);
			}
		}
		for (Element element : elements) {
			assertTrue(ids.add(element.getId()), when);
			if (element instanceof Mat mat) {
				assertTrue(elements.containsAll(mat.getBehind()), when);
			}
		}
		byte[] bytes = JobFile.toBytes(job);
		assertArrayEquals(bytes, JobFile.toBytes(JobFile.load(bytes, "again")), when);
	}

	private static Edit edit(Job job, Random random) {
		List<Element> some = new ArrayList<>(Jobs.elements(job));
		Collections.shuffle(some, random);
		some = some.subList(0, Math.min(some.size(), 1 + random.nextInt(5)));
		if (random.nextInt(4) == 0) {
			List<Element> whole = new ArrayList<>();
			some.forEach(element -> Jobs.groupOf(element).map(Jobs::elements).ifPresent(whole::addAll));
			some = whole.isEmpty() ? some : whole.stream().distinct().toList();
		}
		Layer layer = job.getLayers().isEmpty() ? null : job.getLayers().get(random.nextInt(job.getLayers().size()));
		if (layer == null || some.isEmpty()) {
			return new AddLayer(job, 0, "New");
		}
		boolean crowded = Jobs.elements(job).size() > 30;
		return switch (random.nextInt(crowded ? 18 : 22)) {
		case 0, 1, 2 -> new GroupElements(some);
		case 3 -> new UngroupElements(some);
		case 4 -> SetElements.visible(some, random.nextInt(3) > 0);
		case 5 -> SetElements.locked(some.subList(0, 1), random.nextInt(5) == 0);
		case 6 -> new RenameElements(some.subList(0, 1), random.nextBoolean() ? "Name " + random.nextInt(3) : null);
		case 7 -> job.getGroups().isEmpty() ? new UngroupElements(some)
				: new RenameGroup(job.getGroups().get(0), "Group " + random.nextInt(3));
		case 8 -> new RestackElements(some, layer, random.nextInt(layer.getElements().size() + 1));
		case 9 -> RestackElements.onto(some, layer);
		case 10 -> new SetLayerStock(layer, random.nextBoolean() ? "card-" + random.nextInt(3) : null);
		case 11 -> job.getLayers().size() > 8 ? new RemoveLayer(layer)
				: new AddLayer(job, random.nextInt(job.getLayers().size() + 1), "New");
		case 12 -> random.nextInt(3) > 0 && !crowded ? new MoveLayer(layer, random.nextInt(job.getLayers().size()))
				: new RemoveLayer(layer);
		case 13 -> new DeleteElements(some.subList(0, crowded ? some.size() : 1));
		case 14 -> new AlignElements(boxes(some, random), AlignElements.Edge.values()[random.nextInt(6)]);
		case 15 -> new MoveElements(some, random.nextInt(5), 1);
		case 16 -> SetLayers.locked(List.of(layer), random.nextInt(6) == 0);
		case 17 -> some.get(0) instanceof Mat mat ? new RemoveMat(mat)
				: new SetLayerColour(layer, "#00000" + random.nextInt(9));
		case 18 -> new DuplicateElements(some, 1, 1);
		case 19 -> new PasteElements(job, JobFragment.read(JobFragment.write(some)).orElseThrow(), 1, 1);
		case 20 -> new DuplicateLayer(layer, "Copy");
		default -> new AddMatBehind(some, List.of(2.0), mm -> "Mat");
		};
	}

	private static Map<Element, Box> boxes(List<Element> elements, Random random) {
		Map<Element, Box> boxes = new LinkedHashMap<>();
		for (Element element : elements) {
			double x = random.nextInt(50);
			boxes.put(element, new Box(x, 0, x + 1 + random.nextInt(20), 1));
		}
		return boxes;
	}
}

package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.frisket.editing.arranging.AlignElements;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.arranging.DistributeElements;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.elements.AddElement;
import org.frisket.editing.elements.ChangeOperation;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.editing.elements.PasteElements;
import org.frisket.editing.elements.ReorderElements;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.editing.layers.SetLayers;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.SetMatDistance;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.editing.wording.TypeWording;
import org.frisket.model.Alignment;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.Test;

class EditHistoryTest {

	/** With attributes that this version does not know, on a wording, a mat and a layer. */
	private static final String START = """
			<?xml version="1.0" encoding="UTF-8"?>
			<frisket:Job xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
			xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xmlns:frisket="urn:frisket:job:1" id="j" title="Tags">
			  <layers id="l1" name="Front" grain="long">
			    <elements xsi:type="frisket:Wording" id="e1" text="For you" height="12" slant="9">
			      <flourishes letter="3" dx="0.2"/>
			    </elements>
			    <elements xsi:type="frisket:Outline" id="e2" pathData="M0 0L1 0L1 1Z"/>
			  </layers>
			  <layers id="l2" name="Back">
			    <elements xsi:type="frisket:Mat" id="e3" behind="e1 e2" distance="3" sheen="satin"/>
			  </layers>
			</frisket:Job>
			""";

	private final Random random = new Random(1707);

	private static Job start() throws IOException {
		return JobFile.load(START.getBytes(StandardCharsets.UTF_8), "tags");
	}

	@Test
	void namesFollowTheEdits() throws IOException {
		Job job = start();
		Layer layer = job.getLayers().get(0);
		EditHistory history = new EditHistory();
		assertEquals(Optional.empty(), history.undoName());
		history.execute(new RenameLayer(layer, "Lettering"));
		history.execute(new RenameLayer(layer, "Lettering"));
		history.execute(new MoveElements(layer.getElements(), 1, 1));
		assertEquals(List.of("Rename layer", "Move 2 elements"), history.names());
		assertEquals(Optional.of("Move 2 elements"), history.undoName());
		history.undo();
		assertEquals(Optional.of("Rename layer"), history.undoName());
		assertEquals(Optional.of("Move 2 elements"), history.redoName());
		history.execute(new RenameLayer(layer, "Words"));
		assertFalse(history.canRedo());
		history.redo();
		assertEquals("Words", layer.getName());
		history.undo();
		history.undo();
		history.undo();
		assertEquals("Front", layer.getName());
		assertFalse(history.canUndo());
	}

	@Test
	void undoneJobIsTheSameToTheByte() throws IOException {
		Job job = start();
		byte[] first = JobFile.toBytes(job);
		assertEquals(START, new String(first, StandardCharsets.UTF_8));
		EditHistory history = new EditHistory();
		Deque<byte[]> before = new ArrayDeque<>();
		Deque<byte[]> undone = new ArrayDeque<>();
		int applied = 0;
		int undos = 0;
		int redos = 0;
		for (int action = 0; action < 2000; action++) {
			byte[] now = JobFile.toBytes(job);
			int dice = random.nextInt(10);
			if (dice < 5) {
				Edit edit = anyEdit(job);
				if (edit.canApply()) {
					applied++;
					before.push(now);
					undone.clear();
				}
				history.execute(edit);
			} else if (dice < 8 && history.canUndo()) {
				history.undo();
				undos++;
				undone.push(now);
				assertArrayEquals(before.pop(), JobFile.toBytes(job));
			} else if (dice >= 8 && history.canRedo()) {
				history.redo();
				redos++;
				before.push(now);
				assertArrayEquals(undone.pop(), JobFile.toBytes(job));
			}
			assertEquals(before.size(), history.names().size());
		}
		while (history.canUndo()) {
			history.undo();
		}
		assertArrayEquals(first, JobFile.toBytes(job));
		while (history.canRedo()) {
			history.redo();
		}
		byte[] last = JobFile.toBytes(job);
		while (history.canUndo()) {
			history.undo();
		}
		assertArrayEquals(first, JobFile.toBytes(job));
		assertFalse(Arrays.equals(first, last));
		assertTrue(applied > 500 && undos > 400 && redos > 100, applied + " " + undos + " " + redos);
	}

	private Edit anyEdit(Job job) {
		List<Element> all = Jobs.elements(job);
		Layer layer = job.getLayers().get(random.nextInt(job.getLayers().size()));
		List<Element> some = new ArrayList<>(all);
		Collections.shuffle(some, random);
		some = some.subList(0, Math.min(some.size(), random.nextInt(4)));
		Element one = all.isEmpty() ? null : all.get(random.nextInt(all.size()));
		if (all.size() > 25 && random.nextBoolean()) {
			List<Element> free = all.stream().filter(element -> !Jobs.layerOf(element).isLocked()).toList();
			return new DeleteElements(free.subList(0, free.size() * 2 / 3));
		}
		if (random.nextInt(3) == 0 && job.getLayers().size() < 25) {
			return anyElementEdit(job, some, layer);
		}
		switch (random.nextInt(8)) {
		case 0:
		case 1:
			return new AddElement(layer, anyElement(some), random.nextInt(layer.getElements().size() + 1));
		case 2:
			return new DeleteElements(some);
		case 3:
			return new RenameLayer(layer, "Layer " + random.nextInt(5));
		case 4:
			return new MoveElements(some, random.nextInt(9) - 4, random.nextGaussian());
		default:
			if (one instanceof Mat mat) {
				return new SetMatDistance(mat, random.nextInt(4));
			}
			return one instanceof Wording wording ? anyChange(wording) : new MoveElements(some, 1, 0);
		}
	}

	private Edit anyElementEdit(Job job, List<Element> some, Layer layer) {
		List<Mat> mats = some.stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
		switch (random.nextInt(13)) {
		case 0:
			return TransformElements.scale(some, 0.5 + random.nextDouble(), 1 + random.nextInt(2), 3, 4);
		case 1:
			return TransformElements.rotate(some, random.nextInt(4) * Math.PI / 2, random.nextInt(9), 0);
		case 2:
			return TransformElements.mirrorLeftRight(some, random.nextInt(9));
		case 3:
			return new DuplicateElements(some, random.nextInt(3), 1);
		case 4:
			return new ReorderElements(some, ReorderElements.Way.values()[random.nextInt(4)]);
		case 5:
			return SetLayers.visible(List.of(layer), random.nextBoolean());
		case 6:
			return SetLayers.locked(List.of(layer), random.nextInt(4) == 0);
		case 7:
			return new AddMatBehind(some, List.of(1.0 + random.nextInt(6)), mm -> "Mat " + mm);
		case 8:
			return new AlignElements(boxes(some), AlignElements.Edge.values()[random.nextInt(6)]);
		case 9:
			return new DistributeElements(boxes(some), DistributeElements.Direction.values()[random.nextInt(2)]);
		case 10:
			return some.isEmpty() ? new DeleteElements(some)
					: new PasteElements(job, JobFragment.read(JobFragment.write(some)).orElseThrow(), 1, 2);
		case 11:
			return ChangeOperation.kind(some, OperationKind.values()[random.nextInt(3)]);
		default:
			return random.nextBoolean() ? ChangeMat.smoothing(mats, random.nextInt(3))
					: TypeWording.onto(job, FrisketFactory.INSTANCE.createWording(), "Hello");
		}
	}

	private Map<Element, Box> boxes(List<Element> elements) {
		Map<Element, Box> boxes = new LinkedHashMap<>();
		for (Element element : elements) {
			double x = random.nextInt(50);
			double y = random.nextInt(50);
			boxes.put(element, new Box(x, y, x + random.nextInt(20), y + 1));
		}
		return boxes;
	}

	private Edit anyChange(Wording wording) {
		switch (random.nextInt(5)) {
		case 0:
			return ChangeWording.text(wording, "For " + random.nextInt(9) + "\n\"you\" & me");
		case 1:
			return ChangeWording.font(wording,
					random.nextBoolean() ? null : Jobs.font("Bitter", null, "0" + random.nextInt(3), null));
		case 2:
			return ChangeWording.height(wording, 1 + random.nextInt(400) / 10.0);
		case 3:
			return ChangeWording.alignment(wording, Alignment.values()[random.nextInt(3)]);
		default:
			return wording.isJoined() ? ChangeWording.part(wording) : ChangeWording.join(wording, random.nextDouble());
		}
	}

	private Element anyElement(List<Element> behind) {
		switch (random.nextInt(3)) {
		case 0:
			Wording wording = FrisketFactory.INSTANCE.createWording();
			wording.setText("New");
			wording.setHeight(10);
			Jobs.addOperation(wording, OperationKind.DRAW);
			return wording;
		case 1:
			Outline outline = FrisketFactory.INSTANCE.createOutline();
			outline.setPathData("M0 0L9 0L9 9Z");
			return outline;
		default:
			Mat mat = FrisketFactory.INSTANCE.createMat();
			mat.setDistance(2);
			mat.getBehind().addAll(behind);
			return mat;
		}
	}
}

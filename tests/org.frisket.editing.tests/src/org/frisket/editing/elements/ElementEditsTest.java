package org.frisket.editing.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.frisket.editing.Edit;
import org.frisket.editing.EditGroup;
import org.frisket.editing.EditHistory;
import org.frisket.editing.JobFragment;
import org.frisket.editing.arranging.AlignElements;
import org.frisket.editing.arranging.AlignElements.Edge;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.arranging.DistributeElements;
import org.frisket.editing.arranging.DistributeElements.Direction;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.editing.elements.ReorderElements.Way;
import org.frisket.editing.layers.RenameLayer;
import org.frisket.editing.layers.SetLayers;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.editing.wording.TypeWording;
import org.frisket.model.CornerJoin;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.Matrix;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A wording and two dots on one layer, a mat behind the wording on a layer below. */
class ElementEditsTest {

	private Job job;
	private Layer back;
	private Layer front;
	private Wording wording;
	private Outline dot;
	private Outline dash;
	private Mat mat;

	@BeforeEach
	void makeJob() {
		job = Jobs.create("tags", "Gift tags");
		back = Jobs.addLayer(job, "Mat");
		front = Jobs.addLayer(job, "Front");
		wording = Jobs.addWording(front, "For you", 12);
		dot = Jobs.addOutline(front, "M0 0L0 1L1 1Z");
		dash = Jobs.addOutline(front, "M0 0L0 1L9 1Z");
		mat = Jobs.addMat(back, 3, List.of(wording));
	}

	private static String text(Job job) {
		try {
			return new String(JobFile.toBytes(job), StandardCharsets.UTF_8);
		} catch (IOException e) {
			throw new AssertionError(e);
		}
	}

	private void assertReversible(Edit edit) {
		String before = text(job);
		assertTrue(edit.canApply(), edit.name());
		edit.apply();
		String after = text(job);
		assertFalse(before.equals(after), edit.name());
		for (int i = 0; i < 3; i++) {
			edit.undo();
			assertEquals(before, text(job), edit.name());
			edit.redo();
			assertEquals(after, text(job), edit.name());
		}
	}

	private static double[] applied(Matrix m, double x, double y) {
		return new double[] { m.a() * x + m.c() * y + m.e(), m.b() * x + m.d() * y + m.f() };
	}

	private static void assertMaps(Matrix m, double x, double y, double toX, double toY) {
		double[] to = applied(m, x, y);
		assertEquals(toX, to[0], 1e-12);
		assertEquals(toY, to[1], 1e-12);
	}

	@Test
	void scaleKeepsItsFixedPlace() {
		assertReversible(TransformElements.scale(List.of(dot), 2, 3, 10, 20));
		assertMaps(dot.getTransform(), 10, 20, 10, 20);
		assertMaps(dot.getTransform(), 11, 21, 12, 23);
	}

	@Test
	void quarterTurnsAreExactAndFourLeadBack() {
		for (int i = 0; i < 4; i++) {
			new EditHistory().execute(TransformElements.rotate(List.of(dot), Math.PI / 2, 3, 7));
			if (i == 0) {
				// y points down, so a positive angle turns clockwise to the viewer
				assertMaps(dot.getTransform(), 4, 7, 3, 8);
			}
		}
		assertEquals(Matrix.IDENTITY, dot.getTransform());
		assertReversible(TransformElements.rotate(List.of(dot), Math.toRadians(15), 3, 7));
		assertEquals(Math.cos(Math.toRadians(15)), dot.getTransform().a(), 1e-15);
	}

	@Test
	void mirrorTwiceIsNothing() {
		assertReversible(TransformElements.mirrorLeftRight(List.of(dot), 5));
		assertMaps(dot.getTransform(), 4, 2, 6, 2);
		assertReversible(TransformElements.mirrorLeftRight(List.of(dot), 5));
		assertEquals(Matrix.IDENTITY, dot.getTransform());
		assertReversible(TransformElements.mirrorTopBottom(List.of(dot), 5));
		assertMaps(dot.getTransform(), 4, 2, 4, 8);
	}

	@Test
	void followingMatIsNotMappedItself() {
		assertReversible(TransformElements.scale(List.of(wording, mat), 2, 2, 0, 0));
		assertEquals(new Matrix(2, 0, 0, 2, 0, 0), wording.getTransform());
		assertEquals(Matrix.IDENTITY, mat.getTransform());
	}

	@Test
	void mapsThatFlattenOrAreNoNumbersAreRefused() {
		assertFalse(TransformElements.scale(List.of(dot), 0, 1, 0, 0).canApply());
		assertFalse(TransformElements.scale(List.of(dot), Double.NaN, 1, 0, 0).canApply());
		assertFalse(TransformElements.scale(List.of(dot), 1, 1, 5, 5).canApply());
		assertFalse(TransformElements.scale(List.of(), 2, 2, 0, 0).canApply());
		assertEquals("Scale wording", TransformElements.scale(List.of(wording), 2, 2, 0, 0).name());
		assertEquals("Rotate 2 elements", TransformElements.rotate(List.of(wording, dot), 1, 0, 0).name());
	}

	@Test
	void duplicateOfWordingWithItsMatHasAMatOfItsOwn() {
		DuplicateElements edit = new DuplicateElements(List.of(wording, mat), 5, 6);
		assertReversible(edit);
		Mat matCopy = (Mat) edit.copies().get(0);
		Wording copy = (Wording) edit.copies().get(1);
		assertNotSame(wording, copy);
		assertEquals(List.of(copy), matCopy.getBehind());
		assertEquals(List.of(wording), mat.getBehind());
		assertEquals(Matrix.translation(5, 6), copy.getTransform());
		assertEquals(Matrix.IDENTITY, matCopy.getTransform());
		assertEquals(List.of("e5", "e6"), edit.copies().stream().map(Element::getId).toList());
		assertEquals(List.of(wording, dot, dash, copy), front.getElements());
	}

	@Test
	void duplicateOfAMatAloneFollowsTheSame() {
		DuplicateElements edit = new DuplicateElements(List.of(mat), 5, 0);
		assertReversible(edit);
		assertEquals(List.of(wording), ((Mat) edit.copies().get(0)).getBehind());
		assertEquals(Matrix.translation(5, 0), edit.copies().get(0).getTransform());
	}

	@Test
	void orderChangesWithinTheLayer() {
		assertReversible(new ReorderElements(List.of(wording), Way.FORWARD));
		assertEquals(List.of(dot, wording, dash), front.getElements());
		assertReversible(new ReorderElements(List.of(dash), Way.BACKWARD));
		assertEquals(List.of(dot, dash, wording), front.getElements());
		assertReversible(new ReorderElements(List.of(dash, dot), Way.FRONT));
		assertEquals(List.of(wording, dot, dash), front.getElements());
		assertReversible(new ReorderElements(List.of(dash), Way.BOTTOM));
		assertEquals(List.of(dash, wording, dot), front.getElements());
		assertReversible(new ReorderElements(List.of(dash, wording), Way.FORWARD));
		assertEquals(List.of(dot, dash, wording), front.getElements());
		assertFalse(new ReorderElements(List.of(wording), Way.FRONT).canApply());
		assertFalse(new ReorderElements(List.of(mat), Way.BACKWARD).canApply());
	}

	@Test
	void layersAreHiddenAndLocked() {
		assertReversible(SetLayers.visible(List.of(front), false));
		assertFalse(front.isVisible());
		assertReversible(SetLayers.locked(List.of(front, back), true));
		assertTrue(back.isLocked());
		assertReversible(SetLayers.locked(List.of(back), false));
		assertFalse(SetLayers.locked(List.of(front), true).canApply());
		assertEquals("Hide layer", SetLayers.visible(List.of(front), false).name());
		assertEquals("Unlock 2 layers", SetLayers.locked(List.of(front, back), false).name());
	}

	@Test
	void matsStandBehindTheWidestAtTheBack() {
		AddMatBehind edit = new AddMatBehind(List.of(wording), List.of(6.0, 1.5), mm -> "Mat " + mm);
		assertReversible(edit);
		assertEquals(List.of("Mat 6.0", "Mat", "Mat 1.5", "Front"),
				job.getLayers().stream().map(Layer::getName).toList());
		assertEquals(List.of(1.5, 6.0), edit.mats().stream().map(Mat::getDistance).toList());
		assertEquals(List.of(wording), edit.mats().get(0).getBehind());
		assertEquals(OperationKind.CUT, edit.mats().get(0).getOperations().get(0).getKind());
		assertEquals(4, job.getLayers().stream().map(Layer::getId).distinct().count());
		assertFalse(new AddMatBehind(List.of(wording), List.of(), mm -> "").canApply());
		assertFalse(new AddMatBehind(List.of(wording), List.of(Double.NaN), mm -> "").canApply());
	}

	private Map<Element, Box> boxes(Object... pairs) {
		Map<Element, Box> boxes = new LinkedHashMap<>();
		for (int i = 0; i < pairs.length; i += 2) {
			boxes.put((Element) pairs[i], (Box) pairs[i + 1]);
		}
		return boxes;
	}

	@Test
	void alignBringsEdgesOntoTheCommonBox() {
		Map<Element, Box> boxes = boxes(dot, new Box(0, 0, 2, 2), dash, new Box(5, 4, 15, 10));
		record Case(Edge edge, Matrix dot, Matrix dash) {
		}
		for (Case c : List.of(new Case(Edge.LEFT, Matrix.IDENTITY, Matrix.translation(-5, 0)),
				new Case(Edge.CENTRE, Matrix.translation(6.5, 0), Matrix.translation(-2.5, 0)),
				new Case(Edge.RIGHT, Matrix.translation(13, 0), Matrix.IDENTITY),
				new Case(Edge.TOP, Matrix.IDENTITY, Matrix.translation(0, -4)),
				new Case(Edge.MIDDLE, Matrix.translation(0, 4), Matrix.translation(0, -2)),
				new Case(Edge.BOTTOM, Matrix.translation(0, 8), Matrix.IDENTITY))) {
			AlignElements edit = new AlignElements(boxes, c.edge());
			assertReversible(edit);
			assertEquals(c.dot(), dot.getTransform(), c.edge().toString());
			assertEquals(c.dash(), dash.getTransform(), c.edge().toString());
			edit.undo();
		}
		assertFalse(new AlignElements(boxes(dot, new Box(0, 0, 2, 2)), Edge.LEFT).canApply());
		assertFalse(new AlignElements(boxes(dot, new Box(0, 0, 2, 2), dash, new Box(0, 4, 9, 9)), Edge.LEFT).canApply());
	}

	@Test
	void followingMatIsLeftOutOfTheAlignment() {
		Map<Element, Box> boxes = boxes(wording, new Box(10, 0, 40, 12), mat, new Box(7, -3, 43, 15), dot,
				new Box(20, 0, 22, 2));
		assertReversible(new AlignElements(boxes, Edge.LEFT));
		assertEquals(Matrix.translation(-10, 0), dot.getTransform());
		assertEquals(Matrix.IDENTITY, mat.getTransform());
	}

	@Test
	void distributeMakesGapsEqual() {
		Map<Element, Box> boxes = boxes(dash, new Box(30, 0, 40, 1), dot, new Box(0, 0, 4, 1), wording,
				new Box(5, 9, 11, 12));
		assertReversible(new DistributeElements(boxes, Direction.ACROSS));
		// gaps: (40 - 0 - 10 - 4 - 6) / 2 = 10, so the wording begins at 14
		assertEquals(Matrix.translation(9, 0), wording.getTransform());
		assertEquals(Matrix.IDENTITY, dot.getTransform());
		assertEquals(Matrix.IDENTITY, dash.getTransform());
		Map<Element, Box> column = boxes(dash, new Box(0, 0, 1, 2), dot, new Box(0, 1, 1, 3), wording,
				new Box(0, 4, 1, 6));
		assertReversible(new DistributeElements(column, Direction.DOWN));
		assertEquals(Matrix.translation(0, 1), dot.getTransform());
		assertFalse(new DistributeElements(boxes(dot, new Box(0, 0, 1, 1), dash, new Box(5, 0, 6, 1)),
				Direction.ACROSS).canApply());
	}

	@Test
	void boxesAreInOrder() {
		assertThrows(IllegalArgumentException.class, () -> new Box(1, 0, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> new Box(0, 0, Double.NaN, 0));
	}

	@Test
	void fragmentGoesToAnotherJobWithIdsOfItsOwn() {
		Job read = JobFragment.read(JobFragment.write(List.of(mat, wording))).orElseThrow();
		Job source = job;
		makeJob();
		PasteElements edit = new PasteElements(job, read, 10, 0);
		assertEquals("Paste 2 elements", edit.name());
		assertReversible(edit);
		Mat matCopy = (Mat) edit.pasted().get(0);
		Wording copy = (Wording) edit.pasted().get(1);
		assertEquals(List.of(copy), matCopy.getBehind());
		assertEquals("For you", copy.getText());
		assertEquals(Matrix.translation(10, 0), copy.getTransform());
		assertEquals(Matrix.IDENTITY, matCopy.getTransform());
		assertEquals(List.of("e5", "e6"), edit.pasted().stream().map(Element::getId).toList());
		assertEquals(front, Jobs.layerOf(copy));
		assertEquals(2, job.getLayers().size());
		assertEquals(2, Jobs.elements(read).size());
		assertEquals(4, Jobs.elements(source).size());
	}

	@Test
	void fragmentBringsItsLayersAndLeavesIdleMatsBehind() {
		front.setColour("#aa0000");
		String text = JobFragment.write(List.of(dot, mat));
		Job empty = Jobs.create("other", "Other");
		job = empty;
		assertReversible(new PasteElements(empty, JobFragment.read(text).orElseThrow(), 0, 0));
		assertEquals(1, empty.getLayers().size());
		assertEquals("#aa0000", empty.getLayers().get(0).getColour());
		assertEquals(1, Jobs.elements(empty).size());
		Layer locked = empty.getLayers().get(0);
		locked.setLocked(true);
		assertReversible(new PasteElements(empty, JobFragment.read(text).orElseThrow(), 0, 0));
		assertEquals(2, empty.getLayers().size());
	}

	@Test
	void newElementsHaveIdsOfTheirOwnWhenTheyComeIn() {
		List<String> seen = new ArrayList<>();
		job.eAdapters().add(new EContentAdapter() {
			@Override
			public void notifyChanged(Notification change) {
				super.notifyChanged(change);
				if (change.getNewValue() instanceof Element element && change.getEventType() == Notification.ADD
						&& change.getNotifier() instanceof Layer) {
					seen.add(element.getId());
				}
			}
		});
		new PasteElements(job, JobFragment.read(JobFragment.write(List.of(wording, dot))).orElseThrow(), 0, 0).apply();
		new DuplicateElements(List.of(wording, dot), 0, 0).apply();
		new AddMatBehind(List.of(dot), List.of(1.0), mm -> "Mat").apply();
		TypeWording.onto(job, FrisketFactory.INSTANCE.createWording(), "Hello").apply();
		assertEquals(List.of("e5", "e6", "e7", "e8", "e9", "e10"), seen);
	}

	@Test
	void otherTextIsNoFragment() {
		assertEquals(Optional.empty(), JobFragment.read("For you"));
		assertEquals(Optional.empty(), JobFragment.read(null));
		assertEquals(Optional.empty(), JobFragment.read("<job xmlns=\"urn:frisket:job:1\">"));
		assertFalse(new PasteElements(job, Jobs.create("x", "x"), 0, 0).canApply());
	}

	@Test
	void operationIsReplacedAndKeepsItsTool() {
		assertReversible(ChangeOperation.kind(List.of(dot, dash), OperationKind.CUT));
		assertReversible(ChangeOperation.tool(List.of(dot, dash), 0, "fine blade"));
		assertReversible(ChangeOperation.passes(List.of(dot), 0, 2));
		Jobs.addOperation(dot, OperationKind.DRAW);
		assertReversible(ChangeOperation.kind(List.of(dot, dash), OperationKind.CUT));
		assertEquals(1, dot.getOperations().size());
		Operation cut = dot.getOperations().get(0);
		assertEquals("fine blade", cut.getTool());
		assertEquals(2, cut.getPasses());
		assertFalse(ChangeOperation.kind(List.of(dot), OperationKind.CUT).canApply());
		assertFalse(ChangeOperation.passes(List.of(dot), 0, 0).canApply());
		assertReversible(ChangeOperation.kind(List.of(dot), OperationKind.CREASE));
		assertEquals(OperationKind.CREASE, dot.getOperations().get(0).getKind());
	}

	@Test
	void matsAreChanged() {
		List<Mat> mats = List.of(mat);
		assertReversible(ChangeMat.distance(mats, 4));
		assertReversible(ChangeMat.corners(mats, CornerJoin.MITRE));
		assertReversible(ChangeMat.mitreLimit(mats, 2));
		assertReversible(ChangeMat.holes(mats, HoleRule.FILL));
		assertReversible(ChangeMat.smoothing(mats, 0.5));
		assertFalse(ChangeMat.smoothing(mats, -1).canApply());
		assertFalse(ChangeMat.mitreLimit(mats, 0.5).canApply());
		assertFalse(ChangeMat.distance(mats, Double.POSITIVE_INFINITY).canApply());
		assertFalse(ChangeMat.holes(mats, HoleRule.FILL).canApply());
	}

	@Test
	void groupIsOneStepAndPassesOverWhatChangesNothing() {
		EditGroup group = new EditGroup("Change height", List.of(ChangeWording.height(wording, 12),
				ChangeMat.distance(List.of(mat), 7), new RenameLayer(front, "Words")));
		assertReversible(group);
		assertEquals("Words", front.getName());
		assertFalse(new EditGroup("x", List.of(ChangeWording.height(wording, 12))).canApply());
		EditGroup broken = new EditGroup("x", List.of(new RenameLayer(front, "Lettering"), new Edit() {

			@Override
			public String name() {
				return "Stumble";
			}

			@Override
			public boolean canApply() {
				return true;
			}

			@Override
			public void apply() {
				throw new IllegalStateException("stumbled");
			}

			@Override
			public void undo() {
				throw new AssertionError();
			}

			@Override
			public void redo() {
				throw new AssertionError();
			}
		}));
		assertThrows(IllegalStateException.class, broken::apply);
		assertEquals("Words", front.getName());
	}

	@Test
	void typedWordingIsOneStepHoweverLong() {
		Wording typed = FrisketFactory.INSTANCE.createWording();
		typed.setHeight(40);
		EditHistory history = new EditHistory();
		String before = text(job);
		TypeWording edit = TypeWording.onto(job, typed, "H");
		history.execute(edit);
		edit.retype("He");
		edit.retype("Hello");
		assertEquals(front, Jobs.layerOf(typed));
		assertEquals("e5", typed.getId());
		assertEquals(List.of("Type wording"), history.names());
		String after = text(job);
		history.undo();
		assertEquals(before, text(job));
		assertThrows(IllegalStateException.class, () -> edit.retype("no"));
		history.redo();
		assertEquals(after, text(job));
		assertEquals("Hello", typed.getText());
	}

	@Test
	void firstWordingGetsALayerOfItsOwn() {
		front.setLocked(true);
		TypeWording edit = TypeWording.onto(job, FrisketFactory.INSTANCE.createWording(), "H");
		assertReversible(edit);
		Layer layer = Jobs.layerOf(edit.wording());
		assertEquals("Wording", layer.getName());
		assertEquals(2, job.getLayers().indexOf(layer));
		assertEquals("l3", layer.getId());
	}

	@Test
	void elementIsPlacedWithItsKind() {
		Outline shape = FrisketFactory.INSTANCE.createOutline();
		PlaceElement edit = new PlaceElement(job, shape, "Shapes", "#ffffff");
		assertEquals("Add outline", edit.name());
		assertReversible(edit);
		assertEquals(front, Jobs.layerOf(shape));
		front.setVisible(false);
		assertReversible(new PlaceElement(job, FrisketFactory.INSTANCE.createOutline(), "Shapes", "#ffffff"));
		assertEquals("Shapes", job.getLayers().get(2).getName());
		assertEquals("#ffffff", job.getLayers().get(2).getColour());
		assertFalse(new PlaceElement(job, shape, "Shapes", "#ffffff").canApply());
	}

	@Test
	void retypedWordingGoesBackToItsFirstWords() {
		TypeWording edit = TypeWording.into(wording, "For me");
		assertReversible(edit);
		edit.retype("For us");
		edit.undo();
		assertEquals("For you", wording.getText());
		edit.redo();
		assertEquals("For us", wording.getText());
		assertFalse(TypeWording.into(wording, "For us").canApply());
		front.setLocked(true);
		assertFalse(TypeWording.into(wording, "For all").canApply());
	}
}

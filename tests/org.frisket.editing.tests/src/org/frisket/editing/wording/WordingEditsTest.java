package org.frisket.editing.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.frisket.editing.Edit;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Matrix;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How a wording is set, held together and drawn. */
class WordingEditsTest {

	private final Job job = Jobs.create("job", "Harbour Lane");
	private final Layer layer = Jobs.addLayer(job, "Wording");
	private final Wording wording = Jobs.addWording(layer, "Tide", 20);
	private final Outline path = Jobs.addOutline(layer, "M0 0L100 0");

	@Test
	void wordingAlongAnOutlineLiesWhereThatLies() {
		wording.setTransform(Matrix.translation(10, 20));
		Edit edit = ChangeFlow.along(wording, path);
		edit.apply();
		assertEquals(Flow.PATH, wording.getFlow());
		assertSame(path, wording.getPath());
		assertEquals(Matrix.IDENTITY, wording.getTransform());
		assertFalse(ChangeFlow.along(wording, path).canApply());
		edit.undo();
		assertEquals(Flow.STRAIGHT, wording.getFlow());
		assertNull(wording.getPath());
		assertEquals(Matrix.translation(10, 20), wording.getTransform());
	}

	@Test
	void outlineOfAnotherJobIsNoPath() {
		Job other = Jobs.create("other", "Other");
		assertFalse(ChangeFlow.along(wording, Jobs.addOutline(Jobs.addLayer(other, "A"), "M0 0L1 0")).canApply());
		assertFalse(ChangeFlow.along(wording, null).canApply());
	}

	@Test
	void barsAreAddedChangedAndTakenAway() {
		ChangeHold.addBar(wording, BarKind.UNDERLINE, 1, 2).apply();
		ChangeHold.addBar(wording, BarKind.FRAME, 3, 1.5).apply();
		ChangeHold.barKind(wording, 0, BarKind.BASELINE).apply();
		ChangeHold.barOverhang(wording, 0, 4).apply();
		Bar first = wording.getBars().get(0);
		assertEquals(List.of(BarKind.BASELINE, 0.0, 2.0, 4.0),
				List.of(first.getKind(), first.getOffset(), first.getThickness(), first.getOverhang()));
		ChangeHold.removeBar(wording, 0).apply();
		assertEquals(List.of(BarKind.FRAME), wording.getBars().stream().map(Bar::getKind).toList());
	}

	@Test
	void widthOfTiesTiesToo() {
		ChangeHold.tieWidth(wording, 1).apply();
		assertTrue(wording.isTieMarks());
		assertFalse(ChangeHold.tieWidth(wording, 1).canApply());
	}

	@Test
	void emptyFeaturesAndAxesAreNone() {
		assertFalse(ChangeWording.features(wording, " ").canApply());
		ChangeWording.axes(wording, "wght=700").apply();
		ChangeWording.axes(wording, "").apply();
		assertNull(wording.getAxes());
	}

	static Stream<Edit> impossible() {
		Wording wording = Jobs.addWording(Jobs.addLayer(Jobs.create("job", "Harbour Lane"), "Wording"), "Tide", 20);
		return Stream.of(ChangeFlow.arcRadius(wording, 0), ChangeFlow.arcRadius(wording, Double.POSITIVE_INFINITY),
				ChangeFlow.arcAngle(wording, Double.NaN), ChangeFlow.arc(wording, -1, 0),
				ChangeFlow.pathStart(wording, Double.NaN), ChangeFlow.box(wording, 10, 0),
				ChangeFlow.box(wording, -1, -1), ChangeFlow.box(wording, 0, 0), ChangeFlow.to(wording, null, Matrix.IDENTITY),
				ChangeHold.tieWidth(wording, 0), ChangeBridges.stencil(wording, -1), ChangeHold.removeBar(wording, 0),
				ChangeHold.barThickness(wording, 0, 1), ChangeHold.addBar(wording, BarKind.FRAME, 0, 0),
				ChangePen.style(wording, null), ChangePen.hatchSpacing(wording, 0), ChangePen.hatchInset(wording, -0.1),
				ChangeWording.measure(wording, -1), ChangeWording.embolden(wording, Double.NaN),
				ChangeWording.wordSpacing(wording, Double.NEGATIVE_INFINITY));
	}

	@ParameterizedTest
	@MethodSource("impossible")
	void whatCannotBeIsNotApplied(Edit edit) {
		assertFalse(edit.canApply(), edit.name());
	}
}

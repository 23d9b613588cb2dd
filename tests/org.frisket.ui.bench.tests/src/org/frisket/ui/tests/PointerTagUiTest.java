package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.frisket.ui.bench.internal.figures.TagFigure;
import org.frisket.ui.bench.internal.surface.SurfaceOption;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The measure beside the pointer is read at the edges of the canvas too. */
class PointerTagUiTest extends OpenBench {

	@BeforeEach
	void holdNothing() {
		SurfaceOption.SNAP.set(false);
	}

	@AfterEach
	void restore() {
		Screen.key("Escape");
		Screen.releaseButton();
		SurfaceOption.SNAP.set(SurfaceOption.SNAP.isUsuallyOn());
	}

	private Rectangle tag() {
		List<TagFigure> tags = tags();
		assertEquals(1, tags.size());
		Rectangle box = tags.get(0).getBounds().getCopy();
		tags.get(0).translateToAbsolute(box);
		return box;
	}

	private void assertSeenAt(Point pointer) {
		Screen.moveTo(canvas(), pointer.x - 1, pointer.y - 1);
		Screen.moveTo(canvas(), pointer.x, pointer.y);
		org.eclipse.swt.graphics.Rectangle area = ((Composite) canvas()).getClientArea();
		Rectangle box = tag();
		assertTrue(new Rectangle(0, 0, area.width, area.height).contains(box), box + " in " + area);
		assertFalse(box.contains(pointer), box + " under " + pointer);
	}

	private void assertSeenAtAllEdges() {
		org.eclipse.swt.graphics.Rectangle area = ((Composite) canvas()).getClientArea();
		assertSeenAt(new Point(area.width / 2, area.height / 2));
		assertSeenAt(new Point(area.width - 3, area.height / 2));
		assertSeenAt(new Point(area.width / 2, area.height - 3));
		assertSeenAt(new Point(area.width - 3, area.height - 3));
		assertSeenAt(new Point(2, 2));
	}

	@Test
	void ofADraggedElement() throws Exception {
		Point disc = pixelOf(120, 40);
		Screen.moveTo(canvas(), disc.x, disc.y);
		Screen.pressButton();
		assertSeenAtAllEdges();
		Screen.keep(Screen.picture(canvas()), "tag-at-edge");
	}

	@Test
	void ofTheBoxThatGathers() {
		Point empty = pixelOf(5, 90);
		Screen.moveTo(canvas(), empty.x, empty.y);
		Screen.pressButton();
		assertSeenAtAllEdges();
	}

	@Test
	void ofADraggedNode() {
		bench.nodes().begin((org.frisket.model.Outline) element(sample.plate));
		Screen.settle();
		Point corner = pixelOf(20, 20);
		Screen.moveTo(canvas(), corner.x, corner.y);
		Screen.pressButton();
		assertSeenAtAllEdges();
	}
}

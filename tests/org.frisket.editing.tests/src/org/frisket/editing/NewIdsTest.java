package org.frisket.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.editing.elements.AddElement;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.editing.elements.PasteElements;
import org.frisket.editing.elements.PlaceElement;
import org.frisket.editing.layers.DuplicateLayer;
import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.MakeOutline;
import org.frisket.editing.wording.TypeWording;
import org.frisket.model.Element;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Whoever sees an element come into a job asks for its id: it has one by then, of its own. */
class NewIdsTest {

	private Job job;
	private Layer layer;
	private Outline first;
	private Wording wording;
	private final List<String> seen = new ArrayList<>();

	@BeforeEach
	void watch() {
		job = Jobs.create("tags", "Gift tags");
		layer = Jobs.addLayer(job, "Card");
		first = Jobs.addOutline(layer, "M0 0L0 1L1 1Z");
		wording = Jobs.addWording(layer, "Mira", 12);
		job.eAdapters().add(new EContentAdapter() {
			@Override
			public void notifyChanged(Notification change) {
				super.notifyChanged(change);
				if (change.getNewValue() instanceof Element element && change.getEventType() != Notification.MOVE
						&& change.getNotifier() instanceof Layer) {
					assertNotNull(element.getId(), "without an id");
					seen.add(element.getId());
				}
			}
		});
	}

	/** @param count how many elements come, each time */
	private void assertNamed(Edit edit, int count) {
		assertTrue(edit.canApply(), edit.name());
		edit.apply();
		assertEquals(count, seen.size(), edit.name());
		List<String> ids = Jobs.elements(job).stream().map(Element::getId).toList();
		assertEquals(ids.stream().distinct().toList(), ids);
		edit.undo();
		seen.clear();
		edit.redo();
		assertEquals(count, seen.size(), edit.name());
		assertEquals(ids, Jobs.elements(job).stream().map(Element::getId).toList());
	}

	private static Outline outline() {
		Outline outline = FrisketFactory.INSTANCE.createOutline();
		outline.setPathData("M0 0L0 1L2 1Z");
		return outline;
	}

	@Test
	void ofAnAddedElement() {
		assertNamed(new AddElement(layer, outline()), 1);
	}

	@Test
	void ofAPlacedElement() {
		assertNamed(new PlaceElement(job, outline(), "Outlines", "#336699"), 1);
	}

	@Test
	void ofAWordingThatIsTyped() {
		assertNamed(TypeWording.onto(job, FrisketFactory.INSTANCE.createWording(), "J"), 1);
	}

	@Test
	void ofCopies() {
		assertNamed(new DuplicateElements(List.of(first, wording), 1, 1), 2);
	}

	@Test
	void ofPastedElements() {
		Job fragment = EcoreUtil.copy(job);
		Jobs.elements(fragment).forEach(element -> element.setId(null));
		assertNamed(new PasteElements(job, fragment, 1, 1), 2);
	}

	@Test
	void ofTheElementsOfACopiedLayer() {
		assertNamed(new DuplicateLayer(layer, "Card 2"), 2);
	}

	@Test
	void ofAMat() {
		assertNamed(new AddMatBehind(List.of(first), List.of(2.0), distance -> "Mat"), 1);
	}

	@Test
	void ofAnOutlineInPlaceOfAWording() {
		assertNamed(new MakeOutline(Map.of(wording, "M0 0L0 1L1 1Z")), 1);
	}
}

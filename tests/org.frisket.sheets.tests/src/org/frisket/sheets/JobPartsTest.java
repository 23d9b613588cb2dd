package org.frisket.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What belongs together, and what is a part by itself. */
class JobPartsTest {

	private final Job job = Shapes.job();
	private final Layer card = Shapes.card(job);

	private String parts(boolean apart) {
		return String.join(" ", Shapes.parts(job, apart).stream()
				.map(part -> part.key() + part.elements().stream().map(e -> e.element().getId()).toList()).toList());
	}

	@Test
	void whatLiesInATagBelongsToIt() {
		Shapes.add(card, OperationKind.DRAW, Shapes.box(10, 10, 20, 4));
		Shapes.cut(job, 0, 0, 80, 40);
		Shapes.add(card, OperationKind.CREASE, "M40 0v40");
		Shapes.add(card, OperationKind.CUT, Shapes.disc(70, 20, 3));
		Shapes.add(card, OperationKind.KISS_CUT, Shapes.disc(55, 20, 5));
		Shapes.add(card, OperationKind.PRINT, Shapes.box(5, 20, 20, 10));
		Shapes.cut(job, 100, 0, 30, 30);
		assertEquals("e2[e1, e2, e3, e4, e5, e6] e7[e7]", parts(false));
		assertEquals("e2#1[e1, e2, e3, e4, e5, e6] e7#1[e7]", parts(true));
		assertEquals(3200, Shapes.parts(job, false).get(0).room().area(), 1e-6);
	}

	@Test
	void whatLiesInAHoleIsAPartOfItsOwn() {
		Shapes.add(card, OperationKind.CUT, Shapes.box(0, 0, 60, 60) + "M10 10v40h40v-40z");
		Shapes.cut(job, 20, 20, 20, 20);
		assertEquals("e1[e1] e2[e2]", parts(false));
		assertEquals(60 * 60 - 40 * 40, Shapes.parts(job, false).get(0).room().area(), 1e-6);
	}

	@Test
	void piecesAreTogetherOrApart() {
		Shapes.add(card, OperationKind.CUT, Shapes.box(30, 0, 20, 10) + Shapes.box(0, 20, 20, 10) + Shapes.box(60, 40, 20, 10));
		Shapes.add(card, OperationKind.CUT, Shapes.disc(10, 25, 2) + Shapes.disc(70, 45, 2));
		assertEquals("e1[e1, e2]", parts(false));
		assertEquals("e1#1[e1] e1#2[e1, e2] e1#3[e1, e2]", parts(true));
		SheetPart second = Shapes.parts(job, true).get(1);
		assertEquals(new Bounds(0, 20, 20, 30), second.room().bounds());
		assertEquals(2 * 2 * Math.PI, second.elements().get(1).region().area(), 0.05);
	}

	@Test
	void groupsStayTogetherOnTheirLayer() {
		Element one = Shapes.cut(job, 0, 0, 10, 10);
		Element other = Shapes.cut(job, 50, 0, 10, 10);
		Layer second = Jobs.addLayer(job, "Film");
		Element there = Shapes.add(second, OperationKind.CUT, Shapes.box(0, 0, 5, 5));
		Jobs.addGroup(job, List.of(one, other, there));
		Shapes.cut(job, 20, 0, 10, 10);
		assertEquals("e1[e1, e2] e4[e4] e3[e3]", parts(false));
		assertEquals("e1#1[e1] e2#1[e2] e4#1[e4] e3#1[e3]", parts(true));
	}

	@Test
	void whatCrossesStaysTogetherAndWhatTouchesDoesNot() {
		Shapes.cut(job, 0, 0, 30, 30);
		Shapes.add(card, OperationKind.CUT, Shapes.disc(30, 15, 5));
		Shapes.cut(job, 0, 50, 30, 30);
		Shapes.cut(job, 30, 50, 30, 30);
		assertEquals("e1[e1, e2] e3[e3] e4[e4]", parts(false));
		assertEquals(900 + Math.PI * 25 / 2, Shapes.parts(job, false).get(0).room().area(), 0.1);
	}

	@Test
	void aCreaseAcrossAnEdgeTakesRoomBeyondIt() {
		Shapes.cut(job, 0, 0, 30, 30);
		Shapes.add(card, OperationKind.CREASE, "M15 -5V35");
		assertEquals("e1[e1, e2]", parts(false));
		Bounds room = Shapes.parts(job, false).get(0).room().bounds();
		assertEquals(-5.5, room.minY(), 0.01);
		assertEquals(35.5, room.maxY(), 0.01);
		assertEquals(0, room.minX(), 0.01);
	}

	@Test
	void whatIsOnlyDrawnHasTheRoomOfItsBox() {
		Shapes.add(card, OperationKind.DRAW, "M0 0L40 20");
		Shapes.add(card, OperationKind.DRAW, Shapes.box(100, 0, 10, 10));
		Shapes.add(card, OperationKind.PRINT, Shapes.box(200, 0, 10, 10));
		assertEquals("e1[e1] e2[e2]", parts(false));
		assertEquals("e1[e1] e2[e2]", parts(true));
		assertEquals(41 * 21, Shapes.parts(job, false).get(0).room().area(), 1e-6);
	}

	@Test
	void hiddenElementsAndLayersAreNoParts() {
		Shapes.cut(job, 0, 0, 10, 10).setVisible(false);
		Shapes.cut(job, 20, 0, 10, 10);
		Layer second = Jobs.addLayer(job, "Film");
		Shapes.add(second, OperationKind.CUT, Shapes.box(0, 0, 5, 5));
		second.setVisible(false);
		assertEquals("e2[e2]", parts(false));
	}

	/** JTS unites the same shapes on its own. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6 })
	void nothingIsLostAndAreasAgreeWithJts(long seed) {
		Random random = new Random(seed);
		for (int i = 0; i < 60; i++) {
			double x = random.nextInt(200);
			double y = random.nextInt(200);
			double size = 1 + random.nextInt(i % 5 == 0 ? 60 : 12);
			OperationKind kind = i % 7 == 3 ? OperationKind.DRAW : OperationKind.CUT;
			Shapes.add(card, kind, i % 2 == 0 ? Shapes.box(x, y, size, size / 2) : Shapes.disc(x, y, size)
					+ (i % 3 == 0 ? Shapes.disc(x + 300, y, size / 3) : ""));
		}
		List<PreparedElement> elements = SampleJobs.prepared(job).layers().get(0).shown();
		for (boolean apart : new boolean[] { false, true }) {
			List<SheetPart> parts = Shapes.parts(job, apart);
			Map<String, Double> seen = new HashMap<>();
			parts.forEach(part -> part.elements().forEach(e -> seen.merge(e.element().getId(), e.region().area(), Double::sum)));
			elements.forEach(e -> assertEquals(e.region().area(), seen.get(e.element().getId()), 1e-6, "seed " + seed));
			assertEquals(parts.size(), parts.stream().map(SheetPart::key).distinct().count(), "keys tell apart");
			if (!apart) {
				assertEquals(elements.size(), parts.stream().mapToInt(part -> part.elements().size()).sum());
			}
			List<Geometry> cut = new ArrayList<>();
			elements.stream().filter(e -> e.has(OperationKind.CUT)).map(PreparedElement::region)
					.forEach(region -> cut.add(Polygons.of(region, 0.002)));
			List<Geometry> rooms = new ArrayList<>();
			parts.stream().filter(part -> part.elements().stream().anyMatch(e -> e.has(OperationKind.CUT)))
					.forEach(part -> rooms.add(Polygons.of(part.room(), 0.002)));
			Geometry expected = OverlayNGRobust.union(cut);
			Geometry room = OverlayNGRobust.union(rooms);
			assertTrue(OverlayNGRobust.overlay(expected, room, OverlayNG.DIFFERENCE)
					.getArea() < 0.05 * expected.getLength(), "all that is cut has room");
			// parts do not lie on each other
			double sum = rooms.stream().mapToDouble(Geometry::getArea).sum();
			assertEquals(room.getArea(), sum, 0.04 * expected.getLength());
		}
	}

	/** Tags side by side on a grid, each with a hole; nothing but neighbours may be looked at, or this takes minutes. */
	@Test
	void fiveThousandElementsAreSoonParted() {
		List<PreparedElement> elements = new ArrayList<>();
		Shapes.cut(job, 0, 0, 12, 12);
		Shapes.add(card, OperationKind.CUT, Shapes.disc(6, 6, 2));
		PreparedJob two = SampleJobs.prepared(job);
		for (int i = 0; i < 2500; i++) {
			for (PreparedElement each : two.layers().get(0).elements()) {
				Element copy = EcoreUtil.copy(each.element());
				copy.setId("e" + (elements.size() + 1));
				Transform place = Transform.translation(i % 50 * 12, i / 50 * 12);
				elements.add(new PreparedElement(copy, each.region().transformed(place), List.of(), each.uncleaned(), false,
						each.xHeight(), List.of()));
			}
		}
		List<SheetPart> parts = JobParts.of(new PreparedJob(job, List.of(new PreparedLayer(card, elements))), false,
				Tolerance.DEFAULT, Monitor.NONE);
		assertEquals(2500, parts.size());
		assertTrue(parts.stream().allMatch(part -> part.elements().size() == 2 && Math.abs(part.room().area() - 144) < 1e-6));
	}

	@Test
	void titlesAreWhatPeopleCallThem() {
		Element named = Shapes.cut(job, 0, 0, 10, 10);
		named.setName("Tag");
		assertEquals("Tag", Shapes.parts(job, false).get(0).title());
		assertEquals("Tag #1", Shapes.parts(job, true).get(0).title());
		assertEquals(List.of("e1", "e1"), Arrays.asList(SheetPart.elementOf("e1#12"), SheetPart.elementOf("e1")));
	}

}

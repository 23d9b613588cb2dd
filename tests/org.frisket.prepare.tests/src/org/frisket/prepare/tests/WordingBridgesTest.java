package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.editing.wording.ChangeBridges;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.Bridge;
import org.frisket.model.BridgeAngle;
import org.frisket.model.Flow;
import org.frisket.model.FrisketFactory;
import org.frisket.model.IslandBridges;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Nudge;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.BridgeEdits;
import org.frisket.prepare.wording.Bridgework;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What holds letters together by decision. The I of Liberation Sans is a plain bar, which makes areas known. */
class WordingBridgesTest {

	private static final double HEIGHT = 20;

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private Job job;
	private Wording wording;

	@BeforeEach
	void start() {
		job = Jobs.create("job", "Ferry banner");
		wording = Jobs.addWording(Jobs.addLayer(job, "Lettering"), "II", HEIGHT);
		wording.setFont(Jobs.font("Liberation Sans", "Regular", null, null));
		Jobs.addOperation(wording, OperationKind.CUT);
	}

	private PreparedElement prepared() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE).element(wording.getId()).orElseThrow();
	}

	private Bridgework work() {
		return preparer.bridgework(wording, Tolerance.DEFAULT, Monitor.NONE);
	}

	private List<String> ids() {
		return prepared().findings().stream().map(Finding::id).toList();
	}

	private Bridge bridge(int one, int other, double width) {
		Bridge bridge = FrisketFactory.INSTANCE.createBridge();
		bridge.setOne(one);
		bridge.setOther(other);
		bridge.setWidth(width);
		wording.getBridges().add(bridge);
		return bridge;
	}

	private IslandBridges islands(int index, int island, int count, double... angles) {
		IslandBridges held = FrisketFactory.INSTANCE.createIslandBridges();
		held.setIndex(index);
		held.setIsland(island);
		held.setCount(count);
		for (double angle : angles) {
			BridgeAngle at = FrisketFactory.INSTANCE.createBridgeAngle();
			at.setAngle(angle);
			held.getAt().add(at);
		}
		wording.getIslands().add(held);
		return held;
	}

	private static int holes(Region region) {
		return region.pieces().stream().mapToInt(piece -> piece.holes().size()).sum();
	}

	/** Space between the two stems. */
	private double gap() {
		List<org.frisket.geometry.Piece> stems = prepared().region().pieces();
		return stems.get(1).bounds().minX() - stems.get(0).bounds().maxX();
	}

	@Test
	void bridgeSpansTheGapAndFollowsTheLetters() {
		double area = prepared().region().area();
		double gap = gap();
		bridge(0, 1, 1.5);
		assertEquals(1, prepared().region().pieces().size());
		assertEquals(area + 1.5 * gap, prepared().region().area(), 0.02);
		assertEquals(List.of(), prepared().findings());
		wording.setTracking(5);
		assertEquals(area + 1.5 * (gap + 5), prepared().region().area(), 0.02);
		wording.setHeight(2 * HEIGHT);
		assertEquals(4 * area + 1.5 * (2 * gap + 5), prepared().region().area(), 0.05);
		assertEquals(1, prepared().region().pieces().size());
	}

	@Test
	void placedBridgeStaysAtItsHeightOfTheLetters() {
		Bridge bridge = bridge(0, 1, 1);
		bridge.setPlaced(true);
		bridge.setOneX(0.3);
		bridge.setOneY(-0.9);
		bridge.setOtherX(0);
		bridge.setOtherY(-0.9);
		for (double height : new double[] { HEIGHT, 33 }) {
			wording.setHeight(height);
			Bridgework.Span span = work().spans().get(0);
			assertEquals(-0.9 * height, span.from().y(), 1e-6);
			assertEquals(-0.9 * height, span.to().y(), 1e-6);
			assertTrue(span.from().x() < span.to().x());
			assertEquals(1, prepared().region().pieces().size());
		}
		wording.setFlow(Flow.ARC);
		wording.setArcRadius(40);
		assertEquals(1, prepared().region().pieces().size());
		assertEquals(40 + 0.9 * 33, work().spans().get(0).from().length(), 0.5);
	}

	@Test
	void twoPartsOfALetterAreTied() {
		wording.setText("i!");
		bridge(0, 0, 1);
		assertEquals(3, prepared().region().pieces().size());
		bridge(1, 1, 1);
		assertEquals(2, prepared().region().pieces().size());
		assertEquals(List.of(), prepared().findings());
	}

	@Test
	void bridgeThatCannotBeIsAFinding() {
		bridge(0, 7, 1);
		assertEquals(List.of("bridge-idle"), ids());
		wording.getBridges().clear();
		bridge(0, 0, 1);
		assertEquals(List.of("bridge-idle"), ids(), "there are no two parts");
		wording.getBridges().clear();
		bridge(0, 1, 0);
		assertEquals(List.of("bridge-idle"), ids(), "it has no width");
		assertEquals(2, prepared().region().pieces().size());
		wording.setText("I I");
		wording.getBridges().clear();
		bridge(0, 1, 1);
		assertEquals(List.of("bridge-idle"), ids(), "a blank leaves no mark");
	}

	@Test
	void whateverIsBridgedIsValid() {
		Random random = new Random(5);
		String letters = "OgTi8&aMxQ";
		for (int i = 0; i < 40; i++) {
			StringBuilder text = new StringBuilder();
			for (int k = 0; k < 4; k++) {
				text.append(letters.charAt(random.nextInt(letters.length())));
			}
			wording.setText(text.toString());
			wording.getBridges().clear();
			for (int k = 0; k < 2; k++) {
				Bridge bridge = bridge(random.nextInt(4), random.nextInt(4), 0.3 + 3 * random.nextDouble());
				bridge.setPlaced(random.nextBoolean());
				bridge.setOneX(random.nextDouble());
				bridge.setOneY(-random.nextDouble());
				bridge.setOtherX(random.nextDouble());
				bridge.setOtherY(-random.nextDouble());
			}
			wording.setEmbolden(random.nextInt(3) * 0.2);
			int loose = prepared().region().pieces().size();
			assertTrue(Polygons.of(prepared().region(), 0.001).isValid(), text + " " + i);
			wording.setStencil(1);
			assertTrue(Polygons.of(prepared().region(), 0.001).isValid(), text + " stencil " + i);
			assertEquals(0, holes(prepared().region()), text.toString());
			assertTrue(prepared().region().pieces().size() >= loose);
			wording.setStencil(0);
		}
	}

	@Test
	void countOfBridgesIsHeeded() {
		wording.setText("OB");
		wording.setStencil(1);
		assertEquals(6, work().islands().stream().mapToInt(i -> i.bridges().size()).sum());
		islands(0, -1, 1);
		assertEquals(1, work().islands().get(0).bridges().size());
		assertEquals(0, holes(prepared().region()));
		wording.getIslands().get(0).setCount(4);
		assertEquals(4, work().islands().get(0).bridges().size());
		islands(1, 1, 3);
		assertEquals(List.of(4, 2, 3), work().islands().stream().map(i -> i.bridges().size()).toList());
		assertEquals(0, holes(prepared().region()));
	}

	@Test
	void islandWithoutBridgesFallsOutAndIsCured() {
		wording.setText("OB");
		wording.setStencil(1);
		islands(1, 0, 0);
		assertEquals(1, holes(prepared().region()));
		assertEquals(List.of("island-loose"), ids());
		assertTrue(work().islands().get(1).loose());
		assertFalse(work().islands().get(2).loose());
		Finding finding = prepared().findings().get(0);
		var trial = Makeready.trial(preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE), preparer,
				FontLibraries.installed(), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE);
		Cure cure = Makeready.cures(finding, trial).get(0);
		cure.edit(job).orElseThrow().apply();
		assertEquals(List.of(), prepared().findings());
		assertEquals(0, holes(prepared().region()));
	}

	@Test
	void anglesAreThoseOfTheLetter() {
		wording.setText("O");
		wording.setStencil(1);
		islands(0, 0, 2, 0, 90);
		Bridgework.IslandAt island = work().islands().get(0);
		assertEquals(List.of(0L, 90L), island.bridges().stream().map(s -> Math.round(island.angle(s.middle())) % 360).toList());
		assertTrue(island.bridges().get(1).middle().y() > island.middle().y() + 1);
		Nudge nudge = FrisketFactory.INSTANCE.createNudge();
		nudge.setIndex(0);
		nudge.setTurn(90);
		wording.getNudges().add(nudge);
		Bridgework.IslandAt turned = work().islands().get(0);
		assertTrue(turned.bridges().get(0).middle().y() > turned.middle().y() + 1, "the letter's right is down now");
		assertEquals(0, turned.angle(turned.bridges().get(0).middle()), 1e-6);
	}

	@Test
	void bridgesAreMovedAddedAndTakenAwayAtPlaces() {
		wording.setText("OI");
		wording.setStencil(1);
		Bridgework.IslandAt island = work().islands().get(0);
		BridgeEdits.Held held = BridgeEdits.at(work(), island.bridges().get(0).middle(), 0.1).orElseThrow();
		BridgeEdits.move(wording, work(), held, island.middle().plus(new Point(5, 5))).orElseThrow().apply();
		assertEquals(45, wording.getIslands().get(0).getAt().get(0).getAngle(), 1e-6);
		assertEquals(2, work().islands().get(0).bridges().size());
		BridgeEdits.add(wording, work(), island.middle().plus(new Point(0.5, 0)), 1).orElseThrow().apply();
		assertEquals(3, work().islands().get(0).bridges().size());
		for (int i = 3; i > 0; i--) {
			BridgeEdits.Held first = BridgeEdits.all(work()).get(0);
			ChangeBridges edit = BridgeEdits.remove(wording, first).orElseThrow();
			edit.apply();
			assertEquals(i - 1, work().islands().get(0).bridges().size());
		}
		assertTrue(work().islands().get(0).loose());
		Point between = new Point(work().letters().get(1).outline().bounds().minX() - 0.3, -HEIGHT / 2);
		BridgeEdits.add(wording, work(), between, 1.2).orElseThrow().apply();
		Bridgework.Span span = work().spans().get(0);
		assertEquals(-HEIGHT / 2, span.middle().y(), 0.3);
		assertEquals(1.2, span.width());
		BridgeEdits.move(wording, work(), new BridgeEdits.Held.Between(span), span.middle().plus(new Point(0, 4))).orElseThrow()
				.apply();
		assertEquals(-HEIGHT / 2 + 4, work().spans().get(0).to().y(), 0.5);
		BridgeEdits.remove(wording, new BridgeEdits.Held.Between(work().spans().get(0))).orElseThrow().apply();
		assertEquals(List.of(), work().spans());
		assertTrue(BridgeEdits.add(wording, work(), new Point(900, 900), 1).isPresent(),
				"the nearest letters, however far the pointer is");
	}

	@Test
	void tiesAloneNameOnlyWhatIsLoose() {
		wording.setText("j\u00E4hi");
		wording.setTieMarks(true);
		assertEquals(List.of(), prepared().findings(), "letters were not asked to hang together");
		assertEquals(4, prepared().region().pieces().size());
		wording.setTieWidth(0);
		assertEquals(4, ids().stream().filter("loose-piece"::equals).count(), "two dots, and two of the umlaut");
	}

	@Test
	void barsFollowAnArc() {
		wording.setText("HAUL");
		wording.setFlow(Flow.ARC);
		wording.setArcRadius(60);
		Bar bar = FrisketFactory.INSTANCE.createBar();
		bar.setKind(BarKind.UNDERLINE);
		bar.setOffset(2);
		bar.setThickness(1.5);
		wording.getBars().add(bar);
		PreparedElement prepared = prepared();
		assertEquals(5, prepared.region().pieces().size());
		var band = prepared.region().pieces().stream()
				.max((a, b) -> Double.compare(a.bounds().width(), b.bounds().width())).orElseThrow();
		for (Point point : band.outer().flattened(0.01)) {
			assertTrue(point.length() > 60 - 3.5 - 0.02 && point.length() < 60 - 2 + 0.02, "at " + point.length());
		}
		// feet are straight: at their corners they stand off the circle
		bar.setOffset(-1);
		assertEquals(1, prepared().region().pieces().size());
		assertFalse(ids().contains("bar-left-out"));
	}

	@Test
	void barsFollowAPath() {
		var path = Jobs.addOutline(job.getLayers().get(0), "M0 0C40 -30 80 30 120 0");
		wording.setText("HAUL");
		wording.setFlow(Flow.PATH);
		wording.setPath(path);
		Bar bar = FrisketFactory.INSTANCE.createBar();
		bar.setKind(BarKind.BASELINE);
		bar.setOffset(0);
		bar.setThickness(2);
		wording.getBars().add(bar);
		assertEquals(1, prepared().region().pieces().size());
		assertTrue(Polygons.of(prepared().region(), 0.001).isValid());
		double before = prepared().region().area();
		bar.setThickness(3);
		assertNotEquals(before, prepared().region().area());
	}
}

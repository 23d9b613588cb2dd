package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.Element;
import org.frisket.model.FrameKind;
import org.frisket.model.FrisketFactory;
import org.frisket.model.HoleRule;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.model.Matrix;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.WeedLines;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.Limits;
import org.frisket.prepare.fonts.FontLibraries;
import org.junit.jupiter.api.Test;

/** Mats of all forms, combinations and weed lines. */
class FollowersTest {

	private static final double SLACK = 0.02 * 100;

	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());
	private final Job job = Jobs.create("tags", "Gift tags");
	private final Layer front = Jobs.addLayer(job, "Front");
	private final Outline one = outline("M0 0V10H10V0Z");
	private final Outline other = outline("M6 0V10H16V0Z");

	private Outline outline(String path) {
		Outline outline = Jobs.addOutline(front, path);
		Jobs.addOperation(outline, OperationKind.CUT);
		return outline;
	}

	private PreparedJob prepared() {
		return preparer.prepare(job, Tolerance.DEFAULT, Monitor.NONE);
	}

	private PreparedElement prepared(Element element) {
		return prepared().element(element.getId()).orElseThrow();
	}

	private Region region(Element element) {
		return prepared(element).region();
	}

	private List<String> findings(Element element) {
		return prepared(element).findings().stream().map(Finding::id).toList();
	}

	private Mat mat(MatForm form, Element... behind) {
		Mat mat = Jobs.addMat(front, 0, List.of(behind));
		mat.setForm(form);
		return mat;
	}

	private <F extends Element> F add(F follower, Element... sources) {
		Jobs.sources(follower).addAll(List.of(sources));
		Jobs.addOperation(follower, OperationKind.CUT);
		follower.setId(org.frisket.model.Ids.nextElement(job));
		front.getElements().add(follower);
		return follower;
	}

	private Combination combination(CombinationRule rule, Element... parts) {
		Combination combination = FrisketFactory.INSTANCE.createCombination();
		combination.setRule(rule);
		return add(combination, parts);
	}

	@Test
	void matsHaveTheirForms() {
		one.setPathData("M0 0V30H10V20H3V10H10V0Z");
		Mat mat = mat(MatForm.CONVEX_HULL, one);
		assertEquals(300, region(mat).area(), 1e-6);
		mat.setDistance(2);
		assertEquals(300 + 80 * 2 + Math.PI * 4, region(mat).area(), SLACK);
		mat.setDistance(0);
		mat.setForm(MatForm.HOLLOW_HULL);
		mat.setReach(11);
		assertEquals(300, region(mat).area(), SLACK);
		mat.setReach(0);
		assertEquals(230, region(mat).area(), SLACK);
		mat.setForm(MatForm.SHADOW);
		mat.setShadowX(0);
		mat.setShadowY(-4);
		assertEquals(230 + 4 * 10 + 4 * 7, region(mat).area(), SLACK);
		mat.setForm(MatForm.FRAME);
		mat.setFrameMargin(5);
		mat.setFrameWidth(2);
		assertEquals(24 * 44 - 20 * 40, region(mat).area(), SLACK);
		mat.setCornerRadius(2);
		assertEquals(24 * 44 - 20 * 40 - (4 - Math.PI) * 4, region(mat).area(), SLACK);
		mat.setHoles(HoleRule.FILL);
		assertEquals(24 * 44 - (4 - Math.PI) * 4, region(mat).area(), SLACK);
		mat.setFrameKind(FrameKind.ELLIPSE);
		assertTrue(region(mat).area() > Math.PI * (5 * Math.sqrt(2) + 7) * (15 * Math.sqrt(2) + 7) - SLACK);
		mat.setFrameWidth(0);
		assertEquals(List.of("mat-vanished"), findings(mat));
	}

	@Test
	void smallHolesAreFilledAndCornersRounded() {
		one.setPathData("M0 0V20H40V0ZM3 3H5V5H3ZM20 5H30V15H20Z");
		Mat mat = mat(MatForm.FOLLOW, one);
		assertEquals(800 - 4 - 100, region(mat).area(), 1e-6);
		mat.setHoles(HoleRule.FILL_SMALL);
		assertEquals(700, region(mat).area(), 1e-6);
		mat.setSmallestHole(12);
		assertEquals(800, region(mat).area(), 1e-6);
		mat.setCornerRadius(3);
		assertEquals(800 - (4 - Math.PI) * 9, region(mat).area(), SLACK);
	}

	@Test
	void combinationsFollowTheirParts() {
		Combination made = combination(CombinationRule.UNITE, one, other);
		assertEquals(160, region(made).area(), 1e-9);
		made.setRule(CombinationRule.SUBTRACT);
		assertEquals(60, region(made).area(), 1e-9);
		made.setRule(CombinationRule.INTERSECT);
		assertEquals(40, region(made).area(), 1e-9);
		made.setRule(CombinationRule.EXCLUDE);
		assertEquals(120, region(made).area(), 0.1);
		other.setPathData("M8 0V10H16V0Z");
		assertEquals(140, region(made).area(), 0.1);
		made.setRule(CombinationRule.UNITE);
		made.setCornerRadius(2);
		assertEquals(160 - (4 - Math.PI) * 4, region(made).area(), SLACK);
	}

	@Test
	void movingAllPartsMovesTheirShapeAndMovingOneMakesItAnew() {
		Combination made = combination(CombinationRule.INTERSECT, one, other);
		Region before = region(made);
		one.setTransform(Matrix.translation(30, 5));
		other.setTransform(Matrix.translation(30, 5));
		assertEquals(before.bounds().minX() + 30, region(made).bounds().minX(), 1e-12);
		other.setTransform(Matrix.translation(34, 5));
		assertEquals(0, region(made).area(), 1e-12);
		assertEquals(List.of("combination-empty"), findings(made));
	}

	@Test
	void splitGivesBothSidesOfALine() {
		Outline line = outline("M-5 4H30");
		Combination left = combination(CombinationRule.LEFT, one, line);
		Combination right = combination(CombinationRule.RIGHT, one, line);
		// to the right, left is up
		assertEquals(new Bounds(0, 0, 10, 4), region(left).bounds());
		assertEquals(new Bounds(0, 4, 10, 10), region(right).bounds());
		line.setTransform(Matrix.translation(0, 1));
		assertEquals(50, region(left).area(), 1e-9);
		left.getParts().remove(line);
		assertEquals(List.of("combination-no-line"), findings(left));
	}

	@Test
	void partsAreNotWorkedThemselvesAndCountForNoSize() {
		Outline far = outline("M100 0V10H110V0Z");
		Combination made = combination(CombinationRule.SUBTRACT, one, far);
		PreparedJob all = prepared();
		assertEquals(List.of(), all.element(one.getId()).orElseThrow().operations());
		assertTrue(all.element(one.getId()).orElseThrow().part());
		assertEquals(List.of(other, made), all.layers().get(0).shown().stream().map(PreparedElement::element).toList());
		assertEquals(16, all.visibleBounds().maxX());
		assertFalse(prepared(made).operations().isEmpty());
	}

	@Test
	void madeOfItselfIsRefusedWithAFinding() {
		Combination inner = combination(CombinationRule.UNITE, one, other);
		Combination outer = combination(CombinationRule.UNITE, inner, other);
		inner.getParts().add(outer);
		assertTrue(findings(inner).contains("made-of-itself") || findings(outer).contains("made-of-itself"));
		Mat mat = mat(MatForm.FOLLOW, one);
		combination(CombinationRule.UNITE, other, mat);
		mat.getBehind().add(Jobs.elements(job).get(Jobs.elements(job).size() - 1));
		// does not hang
		prepared();
	}

	@Test
	void equalResultsAreTheSameObjects() {
		Combination made = combination(CombinationRule.UNITE, one, other);
		assertSame(region(made), region(made));
	}

	@Test
	void weedLinesKeepOffAndAreNoOpenContours() {
		WeedLines lines = add(FrisketFactory.INSTANCE.createWeedLines(), one, other);
		other.setPathData("M16 0V10H26V0Z");
		assertEquals(2, prepared(lines).lines().size(), "a box and a line between");
		assertEquals(new Bounds(-5, -5, 31, 15), prepared(lines).bounds());
		lines.setBetween(false);
		lines.setSpacing(4);
		List<Contour> strips = prepared(lines).lines();
		assertEquals(1 + 4 + 4, strips.size());
		// a check of these tests sees every element
		assertEquals(List.of("seen"), Makeready.findings(prepared(), Limits.CARD, Tolerance.DEFAULT, Monitor.NONE).stream()
				.filter(finding -> lines.getId().equals(finding.element())).map(Finding::id).toList());
		lines.setMargin(0);
		assertEquals(List.of("weed-lines-no-margin"), findings(lines));
	}

	@Test
	void creasesAndPerforationsAreBrokenIntoDashesAndCutsAreNot() {
		Operation operation = one.getOperations().get(0);
		operation.setDash(3);
		operation.setGap(2);
		assertEquals(List.of(), prepared(one).dashes(operation), "a cut");
		operation.setKind(OperationKind.PERFORATE);
		List<Contour> dashes = prepared(one).dashes(operation);
		assertEquals(8, dashes.size());
		dashes.forEach(dash -> assertEquals(3, dash.length(), 1e-9));
		operation.setGap(0);
		assertEquals(List.of(), prepared(one).dashes(operation));
	}
}

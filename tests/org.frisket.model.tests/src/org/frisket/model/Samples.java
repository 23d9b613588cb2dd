package org.frisket.model;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Jobs of the invented Harbour Lane Paperworks to test with. */
public final class Samples {

	private Samples() {
	}

	/** Uses every class of the model and every attribute with a value that is not its default. */
	public static Job banner() {
		Job job = Jobs.create("4f1c0a52-banner", "Ferry anniversary banner");
		job.setNumber("31-0207");
		job.setCustomer("Brindle Sound Ferries");
		job.setDue(LocalDate.of(2031, 5, 17));
		job.setQuantity(12);
		job.setStage(Stage.ON_HOLD);
		job.setNotes("Hang it \"landward\" <not seaward> & mind the\n\twind.");

		Layer letters = Jobs.addLayer(job, "Lettering");
		letters.setStock("card-270-white");
		letters.setColour("#1f6f78");
		Wording wording = Jobs.addWording(letters, "Harbour Lane\nfifty \u2766 years \uD83D\uDEA2", 40);
		wording.setName("Main line");
		wording.setFont(Jobs.font("Bitter", "Bold Italic", "ab".repeat(32), "fonts/Bitter-BoldItalic.ttf"));
		wording.setTransform(new Matrix(0.1, 0.2, -0.30000000000000004, 1e-9, 12.5, -1.0 / 3));
		wording.setLineSpacing(1.25);
		wording.setTracking(-0.05);
		wording.setAlignment(Alignment.CENTRE);
		wording.setKerning(false);
		wording.setLigatures(false);
		wording.setJoined(true);
		wording.setTouch(0.45);
		Operation cut = Jobs.addOperation(wording, OperationKind.KISS_CUT);
		cut.setTool("blade-45");
		cut.setPasses(2);
		Jobs.addOperation(wording, OperationKind.CUT);
		Outline outline = Jobs.addOutline(letters, "M0 0L10 0L10 10Z");
		set(wording, outline);
		outline.setVisible(false);
		outline.setLocked(true);

		Layer backing = Jobs.addLayer(job, "Backing");
		backing.setVisible(false);
		backing.setLocked(true);
		Mat mat = Jobs.addMat(backing, 3, List.of(wording, outline));
		mat.setCorners(CornerJoin.MITRE);
		mat.setMitreLimit(2.5);
		mat.setHoles(HoleRule.FILL);
		mat.setSmoothing(0.7);
		Operation crease = Jobs.addOperation(mat, OperationKind.CREASE);
		crease.setDash(4);
		crease.setGap(1.5);
		Picture picture = Jobs.addPicture(backing, ImageBytes.of(new byte[] { 1, 2, 3 }), "image/png", 30, 20);
		picture.setName("Quay");
		cutOut(picture);
		backing.setBack(true);
		Mat outer = Jobs.addMat(backing, -6.5, List.of(mat));
		outer.setCorners(CornerJoin.BEVEL);
		shapes(outline, outer, backing);

		Group both = Jobs.addGroup(job, List.of(mat));
		both.setName("Name plate");
		Group inner = FrisketFactory.INSTANCE.createGroup();
		inner.setId(Ids.nextGroup(job));
		inner.getElements().addAll(List.of(wording, outline));
		both.getGroups().add(inner);
		Jobs.addGuide(job, true, 12.25);
		Jobs.addGuide(job, false, -3);

		job.getRepeats().add("31-banner");
		sheets(job);

		StageChange change = FrisketFactory.INSTANCE.createStageChange();
		change.setAt(Instant.parse("2031-02-07T09:30:00.125Z"));
		change.setWho("Ottoline");
		change.setFrom(Stage.ORDERED);
		change.setTo(Stage.ON_HOLD);
		change.setRemark("waiting for the date");
		job.getHistory().add(change);
		return job;
	}

	/** All that makes shapes of others. */
	private static void shapes(Outline outline, Mat mat, Layer layer) {
		outline.setCornerRadius(0.5);
		mat.setForm(MatForm.HOLLOW_HULL);
		mat.setReach(7);
		mat.setShadowX(-2);
		mat.setShadowY(4.5);
		mat.setFrameKind(FrameKind.ELLIPSE);
		mat.setFrameMargin(6);
		mat.setFrameWidth(3.5);
		mat.setCornerRadius(2);
		mat.setSmallestHole(1.75);
		Combination combination = FrisketFactory.INSTANCE.createCombination();
		combination.setId(Ids.nextElement(Jobs.jobOf(layer)));
		combination.setRule(CombinationRule.SUBTRACT);
		combination.getParts().addAll(List.of(mat, outline));
		combination.setCornerRadius(1.25);
		layer.getElements().add(combination);
		WeedLines lines = FrisketFactory.INSTANCE.createWeedLines();
		lines.setId(Ids.nextElement(Jobs.jobOf(layer)));
		lines.getAround().add(combination);
		lines.setMargin(8);
		lines.setBetween(false);
		lines.setSpacing(25);
		lines.setClearance(1);
		layer.getElements().add(lines);
	}

	private static void set(Wording wording, Outline path) {
		wording.setFeatures("smcp,-kern");
		wording.setAxes("wght=700");
		wording.setWordSpacing(0.75);
		wording.setMeasure(210);
		wording.setFlow(Flow.PATH);
		wording.setArcRadius(120);
		wording.setArcAngle(-15);
		wording.setArcInside(true);
		wording.setArcInward(true);
		wording.setPath(path);
		wording.setPathStart(2.5);
		wording.setPathReversed(true);
		wording.setPathHanging(true);
		wording.setBoxWidth(100);
		wording.setBoxHeight(40);
		wording.setEmbolden(0.2);
		wording.setTieMarks(true);
		wording.setTieWidth(1.5);
		wording.setStencil(0.8);
		wording.setPenStyle(PenStyle.HATCHED);
		wording.setHatchSpacing(0.6);
		wording.setHatchAngle(30);
		wording.setHatchInset(0.25);
		TextSpan span = FrisketFactory.INSTANCE.createTextSpan();
		span.setStart(8);
		span.setEnd(12);
		span.setFont(Jobs.font("Bitter", "Regular", "cd".repeat(32), null));
		span.setHeight(25);
		span.setFeatures("ss01");
		wording.getSpans().add(span);
		Nudge nudge = FrisketFactory.INSTANCE.createNudge();
		nudge.setIndex(3);
		nudge.setDx(0.5);
		nudge.setDy(-1);
		nudge.setTurn(7);
		nudge.setScale(1.1);
		wording.getNudges().add(nudge);
		Bar bar = FrisketFactory.INSTANCE.createBar();
		bar.setKind(BarKind.FRAME);
		bar.setOffset(4);
		bar.setThickness(2);
		bar.setOverhang(-0.5);
		wording.getBars().add(bar);
		addBridges(wording);
	}

	private static void cutOut(Picture picture) {
		picture.setLink("quay.png");
		picture.setBleed(3);
		picture.setBleedKind(BleedKind.ENLARGE);
		PictureEdge edge = FrisketFactory.INSTANCE.createPictureEdge();
		edge.setBackdrop(BackdropRule.COLOUR);
		edge.setColour("#fdfdf8");
		edge.setDifference(12.5);
		edge.setShadow(20);
		edge.setSpecks(1);
		edge.setHoles(EdgeHoles.KEEP);
		edge.setSmoothing(0.4);
		edge.setBorder(-0.25);
		edge.setWhole(true);
		picture.setEdge(edge);
	}

	private static void marks(Sheet sheet) {
		sheet.setPrintMargin(4.2);
		sheet.setPrinter("By the window");
		RegisterMark mark = FrisketFactory.INSTANCE.createRegisterMark();
		mark.setKind(MarkKind.PENNANT);
		mark.setX(12);
		mark.setY(285);
		mark.setTurn(90);
		mark.setSize(6);
		mark.setWeight(0.75);
		mark.setQuiet(2);
		sheet.getMarks().addAll(List.of(FrisketFactory.INSTANCE.createRegisterMark(), mark));
		sheet.setFit(SheetFit.AFFINE);
		MeasuredMark measured = FrisketFactory.INSTANCE.createMeasuredMark();
		measured.setMark(1);
		measured.setX(12.4);
		measured.setY(284.1);
		measured.setBack(true);
		sheet.getMeasured().add(measured);
	}

	private static void sheets(Job job) {
		Sheet sheet = Jobs.addSheet(job, "card-270-white", 420, 297);
		sheet.setName("First");
		sheet.setColour("#f2ede0");
		sheet.setMargin(5);
		sheet.setGap(2.5);
		sheet.setRoll(true);
		sheet.setLeftover("left-3");
		marks(sheet);
		Placement placement = Jobs.addPlacement(sheet, "e1#2", 30.5, 41.25, 180);
		placement.setJob("77-tags");
		placement.setCopy(4);
		placement.setPinned(true);
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob("77-tags");
		guest.setNumber("31-0211");
		guest.setTitle("Gift tags");
		guest.setFile("tags.frjob");
		job.getGuests().add(guest);
		Laying laying = FrisketFactory.INSTANCE.createLaying();
		laying.setWidth(420);
		laying.setHeight(297);
		laying.setRoll(true);
		laying.setGap(2.5);
		laying.setMargin(4);
		laying.setTurning(Turning.QUARTER);
		laying.setApart(true);
		laying.setByJob(true);
		laying.setSeed(7);
		job.setLaying(laying);
	}

	private static void addBridges(Wording wording) {
		Bridge bridge = FrisketFactory.INSTANCE.createBridge();
		bridge.setOne(2);
		bridge.setOther(4);
		bridge.setWidth(1.2);
		bridge.setPlaced(true);
		bridge.setOneX(3);
		bridge.setOneY(-4);
		bridge.setOtherX(0.5);
		bridge.setOtherY(-2);
		wording.getBridges().add(bridge);
		IslandBridges island = FrisketFactory.INSTANCE.createIslandBridges();
		island.setIndex(1);
		island.setIsland(1);
		island.setCount(3);
		BridgeAngle angle = FrisketFactory.INSTANCE.createBridgeAngle();
		angle.setAngle(45);
		island.getAt().add(angle);
		wording.getIslands().add(island);
	}
}

package org.frisket.editing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Alignment;
import org.frisket.model.BackdropRule;
import org.frisket.model.BarKind;
import org.frisket.model.BleedKind;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.CornerJoin;
import org.frisket.model.EdgeHoles;
import org.frisket.model.Element;
import org.frisket.model.Flow;
import org.frisket.model.FrameKind;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Guide;
import org.frisket.model.HoleRule;
import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Laying;
import org.frisket.model.MarkKind;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.model.Matrix;
import org.frisket.model.MeasuredMark;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.model.Picture;
import org.frisket.model.Placement;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;
import org.frisket.model.TextChange;
import org.frisket.model.Turning;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;

/**
 * Makes any edit there is with any values a user might give. Each class of edit has one line; several makers of one
 * class are joined by {@link #anyOf}.
 */
final class RandomEdits {

	/** Makes an edit of a job as it is now; null if the job has nothing for it. It need not be applicable. */
	interface Maker {
		Edit make(Job job, Choice choice);
	}

	private static final Map<Class<? extends Edit>, Maker> MAKERS = new LinkedHashMap<>();

	static {
		maker(AddElement.class, (job, c) -> new AddElement(c.of(job.getLayers()), c.outline()));
		maker(AddGuide.class, (job, c) -> new AddGuide(job, c.coin(), c.signed()));
		maker(AddLayer.class, (job, c) -> new AddLayer(job, c.below(job.getLayers().size() + 1), c.word()));
		maker(AddMatBehind.class, (job, c) -> new AddMatBehind(c.some(job), c.list(c.length(), c.length()), d -> "Mat " + d));
		maker(AddWeedLines.class, (job, c) -> new AddWeedLines(c.some(job)));
		maker(AddSheet.class, anyOf(
				(job, c) -> new AddSheet(job, c.of("card", null, null, null), c.of("#1d6f78", null, null, null), c.length(), c.length(), c.length(), c.length()),
				(job, c) -> c.sheet(job, AddSheet::like)));
		maker(AlignElements.class, (job, c) -> new AlignElements(c.boxes(job), c.of(AlignElements.Edge.values())));
		maker(ChangeGuests.class, anyOf((job, c) -> ChangeGuests.invite(job, c.guest()),
				(job, c) -> job.getGuests().isEmpty() ? null : ChangeGuests.dismiss(job, c.of(job.getGuests()))));
		maker(ChangeSheet.class, anyOf((job, c) -> c.sheet(job, s -> ChangeSheet.name(s, c.word())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.size(s, c.length(), c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.margin(s, c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.gap(s, c.length())),
				(job, c) -> c.sheet(job, s -> ChangeSheet.leftover(s, c.of("leftover-1", null))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.fit(s, c.of(SheetFit.values()))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.printer(s, c.of("Front desk", null))),
				(job, c) -> c.sheet(job, s -> ChangeSheet.printMargin(s, c.length()))));
		maker(ChangeFlow.class, anyOf(
				(job, c) -> c.wording(job, w -> ChangeFlow.to(w, c.of(Flow.values()), Matrix.translation(c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> c.outline(job, path -> ChangeFlow.along(w, path))),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcRadius(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcAngle(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arc(w, c.length(), c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcInside(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcInward(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathStart(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathReversed(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathHanging(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.box(w, c.length(), c.length()))));
		maker(ChangeHold.class, anyOf((job, c) -> c.wording(job, w -> ChangeHold.ties(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeHold.tieWidth(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.addBar(w, c.of(BarKind.values()), c.signed(), c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.removeBar(w, c.below(2))),
				(job, c) -> c.wording(job, w -> ChangeHold.barKind(w, c.below(2), c.of(BarKind.values()))),
				(job, c) -> c.wording(job, w -> ChangeHold.barThickness(w, c.below(2), c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.barOffset(w, c.below(2), c.signed())),
				(job, c) -> c.wording(job, w -> ChangeHold.barOverhang(w, c.below(2), c.signed()))));
		maker(ChangeBridges.class, anyOf(
				(job, c) -> c.wording(job, w -> ChangeBridges.add(w,
						new ChangeBridges.Place(c.below(5), c.signed(), c.signed(), c.below(5), c.signed(), c.signed()), c.length())),
				(job, c) -> c.wording(job, w -> ChangeBridges.move(w, c.below(3),
						new ChangeBridges.Place(c.below(5), c.signed(), c.signed(), c.below(5), c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> ChangeBridges.remove(w, c.below(3))),
				(job, c) -> c.wording(job, w -> ChangeBridges.widths(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeBridges.stencil(w, c.length() / 20)),
				(job, c) -> c.wording(job, w -> ChangeBridges.island(c.of(ChangeBridges.Change.values()), w, c.below(5),
						c.below(2), List.of(c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> ChangeBridges.count(w, c.below(5), c.below(4))),
				(job, c) -> c.wording(job, ChangeBridges::byRule)));
		maker(ChangeCombination.class, anyOf(
				(job, c) -> c.any(Combination.class, job,
						each -> ChangeCombination.rule(List.of(each), c.of(CombinationRule.values()))),
				(job, c) -> c.any(Combination.class, job, each -> ChangeCombination.parts(each, c.some(job))),
				(job, c) -> c.any(Combination.class, job, each -> each.getParts().isEmpty() ? null
						: ChangeCombination.first(each, c.of(each.getParts())))));
		maker(ChangeWeedLines.class, anyOf(
				(job, c) -> c.any(WeedLines.class, job, each -> ChangeWeedLines.margin(List.of(each), c.length())),
				(job, c) -> c.any(WeedLines.class, job, each -> ChangeWeedLines.between(List.of(each), c.coin())),
				(job, c) -> c.any(WeedLines.class, job, each -> ChangeWeedLines.spacing(List.of(each), c.length())),
				(job, c) -> c.any(WeedLines.class, job, each -> ChangeWeedLines.clearance(List.of(each), c.length())),
				(job, c) -> c.any(WeedLines.class, job, each -> ChangeWeedLines.around(each, c.some(job)))));
		maker(CombineElements.class, anyOf(
				(job, c) -> CombineElements.by(c.of(CombinationRule.values()), c.some(job)),
				(job, c) -> CombineElements.split(c.some(job))));
		maker(RoundCorners.class, (job, c) -> new RoundCorners(c.some(job), c.length()));
		maker(ChangeMat.class, anyOf((job, c) -> ChangeMat.form(c.mats(job), c.of(MatForm.values())),
				(job, c) -> ChangeMat.reach(c.mats(job), c.length()),
				(job, c) -> ChangeMat.shadow(c.mats(job), c.signed(), c.signed()),
				(job, c) -> ChangeMat.frameKind(c.mats(job), c.of(FrameKind.values())),
				(job, c) -> ChangeMat.frameMargin(c.mats(job), c.signed()),
				(job, c) -> ChangeMat.frameWidth(c.mats(job), c.length()),
				(job, c) -> ChangeMat.smallestHole(c.mats(job), c.length()),
				(job, c) -> ChangeMat.distance(c.mats(job), c.length()),
				(job, c) -> ChangeMat.corners(c.mats(job), c.of(CornerJoin.values())),
				(job, c) -> ChangeMat.mitreLimit(c.mats(job), 1 + c.length()),
				(job, c) -> ChangeMat.holes(c.mats(job), c.of(HoleRule.values())),
				(job, c) -> ChangeMat.smoothing(c.mats(job), c.length())));
		maker(ChangeOperation.class, anyOf((job, c) -> ChangeOperation.kind(c.some(job), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.kind(c.some(job), c.below(3), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.tool(c.some(job), c.below(3), c.of("blade", "pen", null)),
				(job, c) -> ChangeOperation.passes(c.some(job), c.below(3), c.below(4)),
				(job, c) -> ChangeOperation.dash(c.some(job), c.below(3), c.length()),
				(job, c) -> ChangeOperation.gap(c.some(job), c.below(3), c.length()),
				(job, c) -> ChangeOperation.add(c.some(job), c.of(OperationKind.values())),
				(job, c) -> ChangeOperation.remove(c.some(job), c.below(3)),
				(job, c) -> ChangeOperation.earlier(c.some(job), c.below(3))));
		maker(ChangePath.class, anyOf(
				(job, c) -> c.outline(job, o -> ChangePath.nodes(c.of(ChangePath.Change.values()), 1 + c.below(3), o, c.path())),
				(job, c) -> c.outline(job, o -> ChangePath.repaired("Close contour", o, c.coin() ? c.path() : null)),
				(job, c) -> c.outline(job, o -> ChangePath.reverse(o, c.path()))));
		maker(ChangePen.class, anyOf((job, c) -> c.wording(job, w -> ChangePen.style(w, c.of(PenStyle.values()))),
				(job, c) -> c.wording(job, w -> ChangePen.hatchSpacing(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangePen.hatchAngle(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangePen.hatchInset(w, c.length()))));
		maker(ChangePicture.class, anyOf((job, c) -> ChangePicture.edged(c.all(Picture.class, job), c.coin()),
				(job, c) -> ChangePicture.backdrop(c.all(Picture.class, job), c.of(BackdropRule.values())),
				(job, c) -> ChangePicture.colour(c.all(Picture.class, job), c.of("#f4ecdc", "#1d6f78", "teal")),
				(job, c) -> ChangePicture.difference(c.all(Picture.class, job), c.length()),
				(job, c) -> ChangePicture.shadow(c.all(Picture.class, job), c.length()),
				(job, c) -> ChangePicture.specks(c.all(Picture.class, job), c.length()),
				(job, c) -> ChangePicture.holes(c.all(Picture.class, job), c.of(EdgeHoles.values())),
				(job, c) -> ChangePicture.smoothing(c.all(Picture.class, job), c.length()),
				(job, c) -> ChangePicture.border(c.all(Picture.class, job), c.signed()),
				(job, c) -> ChangePicture.whole(c.all(Picture.class, job), c.coin()),
				(job, c) -> ChangePicture.bleed(c.all(Picture.class, job), c.length()),
				(job, c) -> ChangePicture.bleedKind(c.all(Picture.class, job), c.of(BleedKind.values())),
				(job, c) -> c.any(Picture.class, job, each -> ChangePicture.keep(each, c.image(), "image/png")),
				(job, c) -> c.any(Picture.class, job, each -> ChangePicture.replace(each, c.image(), "image/png", 3, 2))));
		maker(EdgeAsOutline.class, (job, c) -> c.any(Picture.class, job, each -> new EdgeAsOutline(Map.of(each, c.path()))));
		maker(ChangeSpan.class, anyOf(
				(job, c) -> c.wording(job,
						w -> ChangeSpan.font(w, c.below(9), c.below(12), c.coin() ? null : Jobs.font(c.word(), null, null, null))),
				(job, c) -> c.wording(job, w -> ChangeSpan.height(w, c.below(9), c.below(12), c.length())),
				(job, c) -> c.wording(job, w -> ChangeSpan.features(w, c.below(9), c.below(12), c.of("smcp", "-kern,onum", null)))));
		maker(ChangeWording.class, anyOf((job, c) -> c.wording(job, w -> ChangeWording.text(w, c.word())),
				(job, c) -> c.wording(job, w -> ChangeWording.font(w, Jobs.font(c.word(), null, null, null))),
				(job, c) -> c.wording(job, w -> ChangeWording.height(w, 1 + c.length())),
				(job, c) -> c.wording(job, w -> ChangeWording.lineSpacing(w, 1 + c.length() / 50)),
				(job, c) -> c.wording(job, w -> ChangeWording.tracking(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeWording.wordSpacing(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeWording.measure(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeWording.features(w, c.of("smcp", "-liga", null))),
				(job, c) -> c.wording(job, w -> ChangeWording.axes(w, c.of("wght=700", ""))),
				(job, c) -> c.wording(job, w -> ChangeWording.embolden(w, c.signed() / 50)),
				(job, c) -> c.wording(job, w -> ChangeWording.alignment(w, c.of(Alignment.values()))),
				(job, c) -> c.wording(job, w -> ChangeWording.kerning(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeWording.ligatures(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeWording.join(w, c.length() / 20)),
				(job, c) -> c.wording(job, ChangeWording::part)));
		maker(DeleteElements.class, (job, c) -> new DeleteElements(c.some(job)));
		maker(DistributeElements.class,
				(job, c) -> new DistributeElements(c.boxes(job), c.of(DistributeElements.Direction.values())));
		maker(DuplicateElements.class, (job, c) -> new DuplicateElements(c.some(job), c.signed(), c.signed()));
		maker(DuplicateLayer.class, (job, c) -> new DuplicateLayer(c.of(job.getLayers()), "Copy"));
		maker(DuplicatePlacements.class, (job, c) -> new DuplicatePlacements(c.placements(job), c.signed(), c.signed()));
		maker(EditGroup.class, (job, c) -> new EditGroup("Change several", List.of(
				new MoveElements(c.some(job), c.signed(), c.signed()), new RenameLayer(c.of(job.getLayers()), c.word()))));
		maker(ForgetMissing.class, (job, c) -> new ForgetMissing(c.placements(job).stream()
				.filter(each -> Jobs.element(job, String.valueOf(each.getPart())).isEmpty()).toList()));
		maker(GroupElements.class, (job, c) -> new GroupElements(c.someOrWhole(job)));
		maker(ImportArt.class, anyOf(
				(job, c) -> c.fragment(job).map(art -> new ImportArt(job,
						List.of(new ImportArt.Sheet(art, c.signed(), c.signed())), "ferry.svg")).orElse(null),
				(job, c) -> c.fragment(job).map(art -> ImportArt.intoNew(job, art, "ferry.svg")).orElse(null)));
		maker(MakeOutline.class, (job, c) -> c.wording(job, w -> new MakeOutline(Map.of(w, c.path()))));
		maker(MoveElements.class, (job, c) -> new MoveElements(c.some(job), c.signed(), c.signed()));
		maker(MoveGuide.class, (job, c) -> c.guide(job, guide -> new MoveGuide(guide, c.signed())));
		maker(LaySheets.class, (job, c) -> new LaySheets(job, c.newSheets(job), c.coin() ? List.of() : List.of(c.guest()),
				c.laying()));
		maker(MovePlacements.class, (job, c) -> new MovePlacements(c.placements(job), c.signed(), c.signed()));
		maker(MoveToSheet.class,
				(job, c) -> c.sheet(job, s -> new MoveToSheet(c.placements(job), s, c.signed(), c.signed())));
		maker(PinPlacements.class, (job, c) -> new PinPlacements(c.placements(job), c.coin()));
		maker(RemovePlacements.class, (job, c) -> new RemovePlacements(c.placements(job)));
		maker(RemoveSheet.class, (job, c) -> c.sheet(job, RemoveSheet::new));
		maker(TurnPlacements.class, (job, c) -> new TurnPlacements(c.placements(job), c.signed()));
		maker(MoveLayer.class, (job, c) -> new MoveLayer(c.of(job.getLayers()), c.below(job.getLayers().size())));
		maker(NudgeLetters.class, anyOf(
				(job, c) -> c.wording(job, w -> NudgeLetters.move(w,
						NudgeLetters.each(c.letters(w), NudgeLetters.By.move(c.signed(), c.signed())))),
				(job, c) -> c.wording(job, w -> NudgeLetters.turn(w, c.letters(w), c.signed())),
				(job, c) -> c.wording(job, w -> NudgeLetters.scale(w, c.letters(w), c.factor())),
				(job, c) -> c.wording(job, w -> NudgeLetters.back(w, c.letters(w)))));
		maker(PasteElements.class, (job, c) -> c.fragment(job)
				.map(fragment -> new PasteElements(job, fragment, c.signed(), c.signed())).orElse(null));
		maker(PlaceElement.class, anyOf((job, c) -> new PlaceElement(job, c.outline(), c.word(), "#5b3a57"),
				(job, c) -> new PlaceElement(job, c.picture(), c.word(), "#5b3a57")));
		maker(ReloadJob.class, anyOf((job, c) -> new ReloadJob(job, c.changedOutside(job)),
				(job, c) -> ReloadJob.taken(job, c.changedOutside(job)), (job, c) -> ReloadJob.merged(job, c.changedOutside(job))));
		maker(RemoveGuide.class, (job, c) -> c.guide(job, RemoveGuide::new));
		maker(RemoveLayer.class, (job, c) -> new RemoveLayer(c.of(job.getLayers())));
		maker(RemoveMat.class, (job, c) -> c.mats(job).isEmpty() ? null : new RemoveMat(c.of(c.mats(job))));
		maker(RenameElements.class, (job, c) -> new RenameElements(c.some(job), c.word()));
		maker(RenameGroup.class, (job, c) -> job.getGroups().isEmpty() ? null
				: new RenameGroup(c.of(Jobs.groups(job)), c.word()));
		maker(RenameLayer.class, (job, c) -> new RenameLayer(c.of(job.getLayers()), c.word()));
		maker(ReorderElements.class, (job, c) -> new ReorderElements(c.some(job), c.of(ReorderElements.Way.values())));
		maker(LayApart.class, (job, c) -> new LayApart(c.someOrWhole(job)));
		maker(RepeatForLines.class, (job, c) -> c.wording(job, w -> new RepeatForLines(c.coin() ? List.of(w) : c.some(job), w,
				List.of(c.word(), c.word(), "Anneke\nTable 4"), new Box(0, 0, c.length(), c.length()), new Box(0, 0, 9, 9))));
		maker(RestackElements.class, anyOf((job, c) -> RestackElements.onto(c.someOrWhole(job), c.of(job.getLayers())),
				(job, c) -> new RestackElements(c.some(job), c.of(job.getLayers()), c.below(5))));
		// locked less often than not, or soon nothing could be done any more
		maker(SetElements.class, anyOf((job, c) -> SetElements.visible(c.someOrWhole(job), c.coin()),
				(job, c) -> SetElements.locked(c.someOrWhole(job), c.below(5) == 0)));
		maker(SetLayerColour.class, (job, c) -> new SetLayerColour(c.of(job.getLayers()), c.of("#1d6f78", "#f4ecdc", null)));
		maker(SetLayerStock.class, (job, c) -> new SetLayerStock(c.of(job.getLayers()), c.word()));
		maker(SetLayers.class, anyOf((job, c) -> SetLayers.visible(c.layers(job), c.coin()),
				(job, c) -> SetLayers.locked(c.layers(job), c.below(5) == 0)));
		maker(SetMarks.class, (job, c) -> c.sheet(job, s -> new SetMarks(s, c.marks())));
		maker(SetMeasures.class, (job, c) -> c.sheet(job, s -> new SetMeasures(s, c.measured(s))));
		maker(SetMatDistance.class,
				(job, c) -> c.mats(job).isEmpty() ? null : new SetMatDistance(c.of(c.mats(job)), c.length()));
		maker(StandMatBehind.class, anyOf(
				(job, c) -> c.mats(job).isEmpty() ? null : StandMatBehind.elements(c.of(c.mats(job)), c.some(job)),
				(job, c) -> c.mats(job).isEmpty() ? null : StandMatBehind.outOfRing(c.of(c.mats(job)))));
		maker(TransformElements.class, anyOf(
				(job, c) -> TransformElements.scale(c.some(job), c.factor(), c.factor(), c.signed(), c.signed()),
				(job, c) -> TransformElements.rotate(c.some(job), c.signed(), c.signed(), c.signed()),
				(job, c) -> TransformElements.mirrorLeftRight(c.some(job), c.signed()),
				(job, c) -> TransformElements.mirrorTopBottom(c.some(job), c.signed())));
		maker(TypeWording.class, anyOf((job, c) -> TypeWording.onto(job, c.newWording(), c.word()),
				(job, c) -> c.wording(job, w -> TypeWording.into(w, c.word()))));
		maker(UngroupElements.class, (job, c) -> new UngroupElements(c.some(job)));
	}

	private RandomEdits() {
	}

	private static void maker(Class<? extends Edit> type, Maker maker) {
		MAKERS.put(type, maker);
	}

	private static Maker anyOf(Maker... makers) {
		return (job, choice) -> choice.of(makers).make(job, choice);
	}

	static Set<Class<? extends Edit>> classes() {
		return MAKERS.keySet();
	}

	/** Any edit; null if the one that was picked has nothing to work on. */
	static Edit any(Job job, Random random) {
		Choice choice = new Choice(random);
		if (job.getLayers().isEmpty()) {
			return MAKERS.get(PlaceElement.class).make(job, choice);
		}
		// a job that grows without end would only slow the test down
		Class<? extends Edit> type = Jobs.elements(job).size() > 60 ? DeleteElements.class
				: choice.of(List.copyOf(MAKERS.keySet()));
		return MAKERS.get(type).make(job, choice);
	}

	/** What a user might pick and type. */
	record Choice(Random random) {

		int below(int bound) {
			return random.nextInt(bound);
		}

		boolean coin() {
			return random.nextBoolean();
		}

		double length() {
			return Math.round(random.nextDouble() * 200) / 10.0;
		}

		double signed() {
			return random.nextInt(5) == 0 ? 0 : Math.round(random.nextGaussian() * 300) / 10.0;
		}

		double factor() {
			return new double[] { 0.5, 0.8, 1, 1.25, 2 }[below(5)];
		}

		String word() {
			return of("", "Tide", "Harbour Lane", "two\nlines", "Ünder & <over>");
		}

		List<Double> list(double... numbers) {
			List<Double> list = new ArrayList<>();
			for (double number : numbers) {
				list.add(number);
			}
			return list;
		}

		@SafeVarargs
		final <T> T of(T... values) {
			return values[below(values.length)];
		}

		<T> T of(List<? extends T> values) {
			return values.get(below(values.size()));
		}

		/** None to five elements, of locked and hidden layers too. */
		List<Element> some(Job job) {
			List<Element> rest = new ArrayList<>(Jobs.elements(job));
			List<Element> some = new ArrayList<>();
			for (int i = below(6); i > 0 && !rest.isEmpty(); i--) {
				some.add(rest.remove(below(rest.size())));
			}
			return some;
		}

		/** Some elements, or at times whole groups. */
		List<Element> someOrWhole(Job job) {
			List<Element> some = some(job);
			List<Element> whole = some.stream().flatMap(element -> Jobs.groupOf(element).stream())
					.flatMap(group -> Jobs.elements(group).stream()).distinct().toList();
			return below(4) > 0 || whole.isEmpty() ? some : whole;
		}

		List<Layer> layers(Job job) {
			return coin() ? List.copyOf(job.getLayers()) : List.of(this.<Layer>of(job.getLayers()));
		}

		<E extends Element> List<E> all(Class<E> kind, Job job) {
			return Jobs.elements(job).stream().filter(kind::isInstance).map(kind::cast).toList();
		}

		/** One that is read from a file of its own, or kept in the job; with an edge or without. */
		Picture picture() {
			Picture picture = FrisketFactory.INSTANCE.createPicture();
			picture.setLink(coin() ? "quay.png" : null);
			picture.setImage(picture.getLink() == null ? image() : null);
			picture.setWidth(1 + length());
			picture.setHeight(1 + length());
			picture.setEdge(coin() ? FrisketFactory.INSTANCE.createPictureEdge() : null);
			Jobs.addOperation(picture, OperationKind.PRINT);
			return picture;
		}

		ImageBytes image() {
			return ImageBytes.of(new byte[] { (byte) below(4) });
		}

		List<Mat> mats(Job job) {
			return Jobs.elements(job).stream().filter(Mat.class::isInstance).map(Mat.class::cast).toList();
		}

		/** Some letters of one or two characters each. */
		List<TextChange.Part> letters(Wording wording) {
			List<TextChange.Part> letters = new ArrayList<>();
			int length = wording.getText() == null ? 0 : wording.getText().length();
			for (int at = below(3); at < length; at += 1 + below(4)) {
				letters.add(new TextChange.Part(at, Math.min(length, at + 1 + below(2))));
			}
			return letters;
		}

		Edit wording(Job job, Function<Wording, Edit> edit) {
			return any(Wording.class, Jobs.elements(job), edit);
		}

		Edit outline(Job job, Function<Outline, Edit> edit) {
			return any(Outline.class, Jobs.elements(job), edit);
		}

		Edit sheet(Job job, Function<Sheet, Edit> edit) {
			return any(Sheet.class, job.getSheets(), edit);
		}

		/** Some of those on one sheet, or of all. */
		List<Placement> placements(Job job) {
			List<Sheet> sheets = job.getSheets();
			List<Placement> rest = new ArrayList<>();
			(coin() || sheets.isEmpty() ? sheets : List.of(this.<Sheet>of(sheets)))
					.forEach(sheet -> rest.addAll(sheet.getPlacements()));
			List<Placement> some = new ArrayList<>();
			for (int i = below(6); i > 0 && !rest.isEmpty(); i--) {
				some.add(rest.remove(below(rest.size())));
			}
			return some;
		}

		/** The old ones, some of them, or new ones, with some parts. */
		List<Sheet> newSheets(Job job) {
			List<Sheet> sheets = new ArrayList<>();
			if (coin()) {
				job.getSheets().stream().filter(sheet -> coin()).limit(3).forEach(sheets::add);
			}
			for (int i = 1 + below(2); i > 0; i--) {
				Sheet sheet = FrisketFactory.INSTANCE.createSheet();
				sheet.setWidth(length());
				sheet.setHeight(length());
				for (Element element : some(job)) {
					Jobs.addPlacement(sheet, element.getId() + of("", "#1"), length(), length(), of(0, 90, 180));
				}
				Jobs.addPlacement(sheet, of("e0", "e99"), length(), length(), 0);
				sheets.add(sheet);
			}
			return sheets;
		}

		List<RegisterMark> marks() {
			List<RegisterMark> marks = new ArrayList<>();
			for (int i = below(4); i > 0; i--) {
				RegisterMark mark = FrisketFactory.INSTANCE.createRegisterMark();
				mark.setKind(of(MarkKind.values()));
				mark.setX(length());
				mark.setY(length());
				marks.add(mark);
			}
			return marks;
		}

		List<MeasuredMark> measured(Sheet sheet) {
			List<MeasuredMark> measured = new ArrayList<>();
			for (int i = 0; i < sheet.getMarks().size(); i++) {
				MeasuredMark mark = FrisketFactory.INSTANCE.createMeasuredMark();
				mark.setMark(i);
				mark.setX(length());
				mark.setY(length());
				mark.setBack(random.nextBoolean());
				measured.add(mark);
			}
			return measured;
		}

		Guest guest() {
			Guest guest = FrisketFactory.INSTANCE.createGuest();
			guest.setJob(of("guest", "guest-2", "guest-3"));
			guest.setTitle(word());
			return guest;
		}

		Laying laying() {
			Laying laying = FrisketFactory.INSTANCE.createLaying();
			laying.setGap(length());
			laying.setTurning(of(Turning.values()));
			return laying;
		}

		Edit guide(Job job, Function<Guide, Edit> edit) {
			return any(Guide.class, job.getGuides(), edit);
		}

		<T> Edit any(Class<T> type, Job job, Function<T, Edit> edit) {
			return any(type, Jobs.elements(job), edit);
		}

		private <T> Edit any(Class<T> type, List<?> all, Function<T, Edit> edit) {
			List<T> some = all.stream().filter(type::isInstance).map(type::cast).toList();
			return some.isEmpty() ? null : edit.apply(of(some));
		}

		Map<Element, Box> boxes(Job job) {
			Collection<Element> elements = some(job);
			Map<Element, Box> boxes = new LinkedHashMap<>();
			for (Element element : elements) {
				double x = element.getTransform().e();
				double y = element.getTransform().f();
				boxes.put(element, new Box(x, y, x + length(), y + length()));
			}
			return boxes;
		}

		Optional<Job> fragment(Job job) {
			List<Element> some = some(job);
			return some.isEmpty() ? Optional.empty() : JobFragment.read(JobFragment.write(some));
		}

		/** The job as another program may have left its file. */
		Job changedOutside(Job job) {
			Job outside = EcoreUtil.copy(job);
			outside.setTitle(word());
			if (!job.getLayers().isEmpty() && coin()) {
				new DuplicateLayer(outside.getLayers().get(0), "Copy").apply();
			}
			return outside;
		}

		Outline outline() {
			Outline outline = FrisketFactory.INSTANCE.createOutline();
			outline.setPathData(path());
			return outline;
		}

		String path() {
			return "M0 0L" + length() + " 0L0 " + length() + "Z";
		}

		Wording newWording() {
			Wording wording = FrisketFactory.INSTANCE.createWording();
			wording.setHeight(1 + length());
			return wording;
		}
	}
}

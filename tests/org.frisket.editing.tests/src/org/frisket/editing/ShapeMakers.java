package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import java.util.List;
import java.util.Map;

import org.frisket.editing.shapes.AddMatBehind;
import org.frisket.editing.shapes.AddWeedLines;
import org.frisket.editing.shapes.ChangeCombination;
import org.frisket.editing.shapes.ChangeMat;
import org.frisket.editing.shapes.ChangePath;
import org.frisket.editing.shapes.ChangePicture;
import org.frisket.editing.shapes.ChangeWeedLines;
import org.frisket.editing.shapes.CombineElements;
import org.frisket.editing.shapes.EdgeAsOutline;
import org.frisket.editing.shapes.MakeOutline;
import org.frisket.editing.shapes.RemoveMat;
import org.frisket.editing.shapes.RoundCorners;
import org.frisket.editing.shapes.SetMatDistance;
import org.frisket.editing.shapes.StandMatBehind;
import org.frisket.model.BackdropRule;
import org.frisket.model.BleedKind;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.CornerJoin;
import org.frisket.model.EdgeHoles;
import org.frisket.model.FrameKind;
import org.frisket.model.HoleRule;
import org.frisket.model.MatForm;
import org.frisket.model.Picture;
import org.frisket.model.WeedLines;

/** Edits of outlines, pictures, mats, combinations and weed lines. */
final class ShapeMakers {

	private ShapeMakers() {
	}

	static void list() {
		maker(AddMatBehind.class, (job, c) -> new AddMatBehind(c.some(job), c.list(c.length(), c.length()), d -> "Mat " + d));
		maker(AddWeedLines.class, (job, c) -> new AddWeedLines(c.some(job)));
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
		maker(ChangePath.class, anyOf(
				(job, c) -> c.outline(job, o -> ChangePath.nodes(c.of(ChangePath.Change.values()), 1 + c.below(3), o, c.path())),
				(job, c) -> c.outline(job, o -> ChangePath.repaired("Close contour", o, c.coin() ? c.path() : null)),
				(job, c) -> c.outline(job, o -> ChangePath.reverse(o, c.path()))));
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
		maker(MakeOutline.class, (job, c) -> c.wording(job, w -> new MakeOutline(Map.of(w, c.path()))));
		maker(RemoveMat.class, (job, c) -> c.mats(job).isEmpty() ? null : new RemoveMat(c.of(c.mats(job))));
		maker(SetMatDistance.class,
				(job, c) -> c.mats(job).isEmpty() ? null : new SetMatDistance(c.of(c.mats(job)), c.length()));
		maker(StandMatBehind.class, anyOf(
				(job, c) -> c.mats(job).isEmpty() ? null : StandMatBehind.elements(c.of(c.mats(job)), c.some(job)),
				(job, c) -> c.mats(job).isEmpty() ? null : StandMatBehind.outOfRing(c.of(c.mats(job)))));
	}
}

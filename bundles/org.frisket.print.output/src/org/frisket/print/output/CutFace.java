package org.frisket.print.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.RegionBoolean;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Layer;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.PreparedLayer;
import org.frisket.prepare.Uncleaned;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.CutMapping;
import org.frisket.print.register.Projection;
import org.frisket.print.register.RegisterException;
import org.frisket.sheets.LaidPart;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.SheetName;
import org.frisket.sheets.SheetPart;

/**
 * What blade, creasing tool and pen do on one side of a sheet, for any exporter; nothing of it is printed. Work of a layer is
 * done from the side the layer is on: that of a back layer with the sheet turned over, as its print is seen then. So a crease
 * is pressed into the side that it was drawn on, and folds away from the tool, with its bead inside the fold; common practice,
 * no source.
 */
final class CutFace {

	private final SheetFaces faces;
	private final CutMapping mapping;
	private final Projection map;

	/** @param map from the sheet as seen from the front to where it is worked */
	CutFace(SheetFaces faces, Projection map, Tolerance tolerance) {
		this.faces = faces;
		this.map = map;
		mapping = new CutMapping(map, tolerance);
	}

	/**
	 * Empty if nothing is done on that side.
	 *
	 * @param reference marks that are shown and not worked; empty for formats that do not tell the two apart
	 * @throws RegisterException if the map takes a part to infinity
	 */
	Optional<LaidSheet> of(boolean back, Optional<MarkPlan> reference, Monitor monitor) throws RegisterException {
		List<List<PreparedElement>> byPart = new ArrayList<>();
		for (int i = 0; i <= faces.parts().size(); i++) {
			byPart.add(new ArrayList<>());
		}
		List<PreparedElement> content = new ArrayList<>();
		for (FaceItem item : faces.items(back)) {
			monitor.check();
			if (!item.worked().isEmpty()) {
				PreparedElement worked = worked(item);
				content.add(worked);
				byPart.get(item.part()).add(worked);
			}
		}
		if (content.isEmpty()) {
			return Optional.empty();
		}
		if (reference.isPresent()) {
			content.add(0, reference(reference.get(), monitor));
		}
		Sheet sheet = sheet();
		List<LaidPart> parts = new ArrayList<>();
		for (int i = 0; i < faces.parts().size(); i++) {
			if (!byPart.get(i).isEmpty()) {
				LaidPart laid = faces.parts().get(i);
				Region room = mapping.map(laid.room());
				parts.add(new LaidPart(laid.placement(), new SheetPart(laid.part().key(), laid.part().job(), laid.part().layer(),
						byPart.get(i), room), Transform.IDENTITY, room));
			}
		}
		Layer layer = FrisketFactory.INSTANCE.createLayer();
		layer.setId(sheet.getId());
		layer.setName(sheet.getName());
		layer.setStock(sheet.getStock());
		layer.setColour(sheet.getColour());
		return Optional.of(new LaidSheet(sheet, new PreparedJob(faces.job(), List.of(new PreparedLayer(layer, content))), parts,
				List.of(), List.of()));
	}

	/** Large enough for the sheet where it lies, as far as that is to the right of and below zero. */
	private Sheet sheet() {
		Bounds page = faces.page();
		Bounds lies = Bounds.EMPTY;
		for (Point corner : List.of(new Point(0, 0), new Point(page.maxX(), 0), new Point(page.maxX(), page.maxY()),
				new Point(0, page.maxY()))) {
			lies = lies.with(map.apply(corner));
		}
		Sheet sheet = EcoreUtil.copy(faces.sheet());
		sheet.setName(SheetName.of(faces.sheet()));
		sheet.setWidth(Math.max(page.width(), lies.maxX()));
		sheet.setHeight(Math.max(page.height(), lies.maxY()));
		return sheet;
	}

	/** The same lines with the work of machines alone; what they were made from does not matter any more. */
	private PreparedElement worked(FaceItem item) throws RegisterException {
		PreparedElement element = item.element();
		Outline standIn = FrisketFactory.INSTANCE.createOutline();
		standIn.setId(element.element().getId());
		standIn.setName(element.element().getName());
		for (Operation operation : item.worked()) {
			standIn.getOperations().add(EcoreUtil.copy(operation));
		}
		List<Contour> lines = new ArrayList<>();
		for (Contour line : element.lines()) {
			lines.add(mapping.map(line));
		}
		return drawn(standIn, mapping.map(element.region()), lines);
	}

	private PreparedElement reference(MarkPlan plan, Monitor monitor) throws RegisterException {
		Outline marks = FrisketFactory.INSTANCE.createOutline();
		marks.setId("marks");
		marks.setName(Messages.PrintContent_marks);
		Operation printed = FrisketFactory.INSTANCE.createOperation();
		printed.setKind(OperationKind.PRINT);
		marks.getOperations().add(printed);
		Region region = new RegionBoolean().union(plan.marks().stream().map(Mark::region).toList(), Tolerance.DEFAULT, monitor);
		return drawn(marks, mapping.map(region), List.of());
	}

	private static PreparedElement drawn(Outline element, Region region, List<Contour> lines) {
		return new PreparedElement(element, region, lines, Uncleaned.of(region), false, OptionalDouble.empty(),
				List.of());
	}
}

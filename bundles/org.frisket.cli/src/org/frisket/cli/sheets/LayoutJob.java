package org.frisket.cli.sheets;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.PathData;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.impose.Layout;
import org.frisket.impose.Placement;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.OperationKind;

/** A layout as a job: a layer for each sheet, side by side, with its parts to be cut. */
final class LayoutJob {

	private static final double BETWEEN_SHEETS_MM = 10;

	private LayoutJob() {
	}

	static Job of(String title, Layout layout) {
		Job job = Jobs.create("job", title);
		List<Layer> layers = new ArrayList<>();
		List<Double> from = new ArrayList<>();
		double x = 0;
		for (int sheet = 0; sheet < layout.sheets().size(); sheet++) {
			layers.add(Jobs.addLayer(job, "Sheet " + (sheet + 1)));
			from.add(x);
			x += layout.sheets().get(sheet).length() + BETWEEN_SHEETS_MM;
		}
		for (Placement placement : layout.placements()) {
			Region region = placement.region()
					.transformed(Transform.translation(from.get(placement.sheet()), 0));
			Element element = Jobs.addOutline(layers.get(placement.sheet()), PathData.format(region.toOutline()));
			element.setName(placement.part().id());
			Jobs.addOperation(element, OperationKind.CUT);
		}
		return job;
	}
}

package org.frisket.print.output;

import java.util.List;
import java.util.Optional;

import org.frisket.material.sizes.Format;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Sheet;
import org.frisket.sheets.imposing.Supply;

/** The one sheet on which a job without sheets is put as it lies on the bench. It belongs to no job. */
public final class BareSheet {

	private BareSheet() {
	}

	/** @param width mm @param height mm */
	public static Sheet of(Job job, double width, double height) {
		Sheet sheet = FrisketFactory.INSTANCE.createSheet();
		Layer first = first(job);
		sheet.setId("sheet");
		sheet.setStock(first == null ? null : first.getStock());
		sheet.setColour(first == null ? null : first.getColour());
		sheet.setWidth(width);
		sheet.setHeight(height);
		return sheet;
	}

	/** Of the size that the stock of its first layer comes in; empty if that comes in no sheets. */
	public static Optional<Sheet> of(Job job, Supply supply) {
		Layer first = first(job);
		List<Format> sizes = supply.of(first == null ? null : first.getStock(), first == null ? null : first.getColour()).sizes();
		return sizes.stream().filter(Format.Sheet.class::isInstance).map(Format.Sheet.class::cast).findFirst()
				.map(size -> of(job, size.width().doubleValue(), size.height().doubleValue()));
	}

	private static Layer first(Job job) {
		return job.getLayers().isEmpty() ? null : job.getLayers().get(0);
	}
}

package org.frisket.ui.sheets.internal.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.ui.material.internal.StudioShelf;

/** What the studio's shelf says of stocks; nothing before it was looked at. */
final class StockSizes {

	private StockSizes() {
	}

	/** The sizes that the stocks of a job come in, as they are typed. */
	static List<String> of(Job job) {
		Set<String> sizes = new LinkedHashSet<>();
		job.getLayers().stream().map(Layer::getStock).filter(Objects::nonNull).distinct()
				.forEach(stock -> StudioShelf.get().find(stock)
						.ifPresent(shelved -> shelved.stock().sizes().forEach(size -> sizes.add(size.toString()))));
		return List.copyOf(sizes);
	}

	/** What people call a stock; its id if the shelf does not know it, empty for none. */
	static String name(String stock) {
		return stock == null || stock.isBlank() ? "" //$NON-NLS-1$
				: StudioShelf.get().find(stock).map(shelved -> shelved.stock().name()).orElse(stock);
	}
}

package org.frisket.imports.job;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.repair.Mend;
import org.frisket.imports.Remark;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/**
 * Art as a job, and what happened on the way.
 *
 * @param job     new, without a file
 * @param layers  what became of each layer of the file, the lowest first
 * @param remarks those of the importer, then those of the taking over
 */
public record TakenArt(Job job, List<Layer> layers, List<Remark> remarks) {

	/**
	 * A layer of the file.
	 *
	 * @param mends what was put right, with places in mm
	 * @param open  lines that stay open after repair though they nearly close
	 */
	public record Layer(String name, int areas, int lines, int pictures, List<Mend> mends, List<Contour> open) {

		public Layer {
			mends = List.copyOf(mends);
			open = List.copyOf(open);
		}
	}

	public TakenArt {
		layers = List.copyOf(layers);
		remarks = List.copyOf(remarks);
	}

	/** Whether there is nothing in it that a job could hold. */
	public boolean isEmpty() {
		return Jobs.elements(job).isEmpty();
	}

	/** How many things were put right. */
	public int repairs() {
		return layers.stream().mapToInt(layer -> layer.mends().size()).sum();
	}
}

package org.frisket.ui.bench.internal.places;

import java.io.IOException;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.bench.internal.files.BenchPreferences;

/**
 * Nowhere yet: a new job, or the sample, until it is saved.
 *
 * @param number tells several from each other, from 1; 0 for the sample
 */
public record UntitledPlace(int number) implements JobPlace {

	/** The element factory of the inputs of such jobs. */
	public static final String FACTORY = "org.frisket.ui.bench.untitled"; //$NON-NLS-1$
	private static final int SAMPLE = 0;

	@Override
	public String factory() {
		return FACTORY;
	}

	@Override
	public String key() {
		return FACTORY + ':' + number;
	}

	@Override
	public String name() {
		if (number == SAMPLE) {
			return Messages.UntitledPlace_sample;
		}
		return number == 1 ? Messages.UntitledPlace_first : NLS.bind(Messages.UntitledPlace_further, number);
	}

	@Override
	public String toolTip() {
		return NLS.bind(Messages.UntitledPlace_toolTip, name());
	}

	@Override
	public boolean isFar() {
		return false;
	}

	@Override
	public boolean canKeep() {
		return false;
	}

	@Override
	public boolean isLeftForFiles() {
		return true;
	}

	@Override
	public Held load() throws IOException {
		return new Held(JobFile.toBytes(number == SAMPLE ? FerryBanner.make() : empty()), ""); //$NON-NLS-1$
	}

	private static Job empty() {
		Job job = Jobs.create("job", ""); //$NON-NLS-1$ //$NON-NLS-2$
		Jobs.addLayer(job, BenchPreferences.stockName(Messages.UntitledPlace_firstLayer))
				.setColour(BenchPreferences.stockColour());
		return job;
	}

	@Override
	public Held save(byte[] content, String mark) {
		throw new UnsupportedOperationException(key());
	}

	@Override
	public Runnable watch(PlacedBench bench) {
		return () -> {
			// nobody else knows of it
		};
	}

	@Override
	public boolean overtaken(PlacedBench bench, Held theirs) {
		return false;
	}
}

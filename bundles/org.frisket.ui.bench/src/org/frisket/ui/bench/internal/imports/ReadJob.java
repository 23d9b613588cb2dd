package org.frisket.ui.bench.internal.imports;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.Option;
import org.frisket.imports.ImportSource;
import org.frisket.imports.ImportTask;
import org.frisket.imports.ImportedArt;
import org.frisket.imports.ImportedShape;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.UnreadableArtException;
import org.frisket.model.ImageBytes;
import org.frisket.prepare.PreparedPicture;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.ui.bench.internal.picture.Pixels;

/** Reads files off the UI thread. */
final class ReadJob extends Job {

	/** More would be too small to be made out. */
	private static final int MOST_PICTURES = 24;

	private final List<Path> files;
	private final Function<Path, Map<String, String>> options;
	private final Display display;
	private final Consumer<List<ReadArt>> client;

	/**
	 * @param options texts for the importer of a file; asked for on another thread
	 * @param client  told on the UI thread, unless the job is cancelled
	 */
	ReadJob(List<Path> files, Function<Path, Map<String, String>> options, Display display,
			Consumer<List<ReadArt>> client) {
		super(NLS.bind(Messages.ReadJob_name, ImportWords.of(files)));
		this.files = List.copyOf(files);
		this.options = options;
		this.display = display;
		this.client = client;
		setSystem(true);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			List<ReadArt> read = new ArrayList<>();
			for (Path file : files) {
				read.add(read(file, monitor::isCanceled));
			}
			if (!monitor.isCanceled() && !display.isDisposed()) {
				display.asyncExec(() -> client.accept(read));
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		}
	}

	private ReadArt read(Path file, Monitor monitor) {
		Contribution<Importer> importer = Importers.forFile(file.toString()).orElse(null);
		if (importer == null) {
			return ReadArt.failed(file, NLS.bind(Messages.ReadJob_noFormat, file));
		}
		try {
			Map<String, String> texts = options.apply(file);
			ImportedArt art = read(importer, file, texts, monitor);
			if (art.guessed().isEmpty()) {
				return new ReadArt(file, art, pixels(art, monitor), "", null, Map.of()); //$NON-NLS-1$
			}
			Option asked = importer.create().options().stream()
					.filter(option -> option.name().equals(art.guessed().get(0))).findFirst().orElseThrow();
			Map<String, Bounds> sizes = new LinkedHashMap<>();
			for (String answer : asked.choices()) {
				if (!answer.equals(asked.initial())) {
					Map<String, String> answered = new LinkedHashMap<>(texts);
					answered.put(asked.name(), answer);
					sizes.put(answer, read(importer, file, answered, monitor).bounds());
				}
			}
			return new ReadArt(file, art, pixels(art, monitor), "", asked, sizes); //$NON-NLS-1$
		} catch (CancellationException e) {
			throw e;
		} catch (UnreadableArtException | IOException | IllegalArgumentException e) {
			return ReadArt.failed(file, e.getMessage());
		} catch (ContributionException | RuntimeException | LinkageError e) {
			ILog.of(ReadJob.class).error(e.toString(), e);
			return ReadArt.failed(file, String.valueOf(e.getMessage()));
		}
	}

	private static List<Pixels> pixels(ImportedArt art, Monitor monitor) {
		List<Pixels> pixels = new ArrayList<>();
		List<ImportedShape.Picture> pictures = art.layers().stream().flatMap(layer -> layer.shapes().stream())
				.filter(ImportedShape.Picture.class::isInstance).map(ImportedShape.Picture.class::cast).limit(MOST_PICTURES)
				.toList();
		for (ImportedShape.Picture picture : pictures) {
			monitor.check();
			Pixels seen = Pixels.of(new PreparedPicture(ImageBytes.of(picture.bytes()), 1, picture.place()));
			if (seen != null) {
				pixels.add(seen);
			}
		}
		return pixels;
	}

	private static ImportedArt read(Contribution<Importer> importer, Path file, Map<String, String> texts, Monitor monitor)
			throws IOException, UnreadableArtException, ContributionException {
		return new ImportTask(importer).read(ImportSource.of(file), texts, monitor);
	}
}

package org.frisket.ui.bench.internal.places;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.Edit;
import org.frisket.editing.ReloadJob;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.UnreadableJobException;
import org.frisket.model.UnwritableJobException;
import org.frisket.model.WholeFile;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.KeepFontsJob;
import org.frisket.ui.bench.internal.files.RecentJobs;

/**
 * A job file. What is held is marked by its {@link FileStamp}.
 *
 * @param path absolute
 */
public record FilePlace(Path path) implements JobPlace {

	/** The element factory of the inputs of job files. */
	public static final String FACTORY = "org.frisket.ui.bench.jobInputs"; //$NON-NLS-1$

	private static final int REPLACE = 0;
	private static final int SAVE_AS = 1;

	@Override
	public String factory() {
		return FACTORY;
	}

	@Override
	public String key() {
		return FACTORY + ':' + path;
	}

	@Override
	public String name() {
		return Objects.toString(path.getFileName(), path.toString());
	}

	@Override
	public String toolTip() {
		return path.toString();
	}

	@Override
	public boolean isFar() {
		return false;
	}

	@Override
	public boolean isLeftForFiles() {
		return true;
	}

	@Override
	public Optional<Path> file() {
		return Optional.of(path);
	}

	/** Of what the file holds now. */
	public String mark() {
		return FileStamp.of(path).text();
	}

	@Override
	public Held load() throws IOException {
		WholeFile.tidy(path);
		// the mark first: a change between the two is then noticed rather than missed
		String mark = mark();
		try (InputStream in = Files.newInputStream(path)) {
			// a byte more than can be read, which then says so
			return new Held(in.readNBytes(JobFile.LARGEST + 1), mark);
		} catch (IOException e) {
			throw new UnreadableJobException(path.toString(), 0, 0, WholeFile.reason(e), e);
		}
	}

	@Override
	public Held save(byte[] content, String mark) throws IOException {
		FileStamp now = FileStamp.of(path);
		// one that is gone can be written again
		if (now.isFile() && !now.text().equals(mark)) {
			throw new OvertakenException(NLS.bind(Messages.FilePlace_changed, path), null);
		}
		try {
			WholeFile.write(out -> out.write(content), path);
		} catch (IOException e) {
			throw new UnwritableJobException(path.toString(), WholeFile.reason(e), e);
		}
		return new Held(content, mark());
	}

	@Override
	public Edit taking(Job job, Job held) {
		return new ReloadJob(job, held);
	}

	@Override
	public Runnable watch(PlacedBench bench) {
		RecentJobs.shared().add(path);
		return bench.whenBack(new FileWatch(this, bench)::look);
	}

	@Override
	public void kept(PlacedBench bench, Job snapshot) {
		RecentJobs.shared().add(path);
		Display display = bench.shell().getDisplay();
		new KeepFontsJob(snapshot, message -> display.asyncExec(() -> {
			if (!bench.isClosed()) {
				bench.warn(message);
			}
		})).schedule();
	}

	@Override
	public boolean overtaken(PlacedBench bench, Held theirs) {
		int answer = MessageDialog.open(MessageDialog.WARNING, bench.shell(), Messages.FilePlace_changedTitle,
				NLS.bind(Messages.FilePlace_changed, path), SWT.NONE, Messages.FilePlace_replace,
				Messages.FilePlace_saveAs,
				Messages.FilePlace_cancel);
		if (answer == REPLACE) {
			bench.keepDespite(theirs.mark());
			return bench.save();
		}
		return answer == SAVE_AS && bench.saveAs();
	}
}

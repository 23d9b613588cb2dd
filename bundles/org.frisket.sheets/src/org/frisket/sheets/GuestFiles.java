package org.frisket.sheets;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.UnreadableJobException;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;

/**
 * The other jobs on a job's sheets, in files beside its own. Within its host a guest is known by its id; if the host or
 * another guest has the same, with a number behind it.
 */
public final class GuestFiles {

	/**
	 * Guests as far as they could be read.
	 *
	 * @param jobs     by {@link Guest#getJob()}, in the order of the host
	 * @param files    where each of them is
	 * @param problems what could not be read, a sentence each that names the file
	 */
	public record Guests(Map<String, Job> jobs, Map<String, Path> files, List<String> problems) {

		public Guests {
			jobs = new LinkedHashMap<>(jobs);
			files = new LinkedHashMap<>(files);
			problems = List.copyOf(problems);
		}

		/**
		 * The host and its guests worked through, as {@link LaidSheets#of} asks for them.
		 *
		 * @throws java.util.concurrent.CancellationException if the monitor cancels
		 */
		public Map<String, PreparedJob> prepared(PreparedJob host, JobPreparer preparer, Tolerance tolerance,
				Monitor monitor) {
			Map<String, PreparedJob> prepared = new LinkedHashMap<>();
			prepared.put(host.job().getId(), host);
			jobs.forEach((id, job) -> prepared.put(id, preparer.prepare(job, tolerance, monitor)));
			return prepared;
		}
	}

	private GuestFiles() {
	}

	/**
	 * Reads the guests of a job. One that cannot be read is a problem, and the others are there.
	 *
	 * @param hostFile where the job's own file is; null for one without, whose guests need absolute paths
	 */
	public static Guests load(Job host, Path hostFile) {
		Map<String, Job> jobs = new LinkedHashMap<>();
		Map<String, Path> files = new LinkedHashMap<>();
		List<String> problems = new ArrayList<>();
		for (Guest guest : host.getGuests()) {
			String name = title(guest);
			if (guest.getFile() == null || guest.getFile().isBlank()) {
				problems.add(NLS.bind(Messages.GuestFiles_noFile, name));
				continue;
			}
			try {
				Path file = resolved(hostFile, guest.getFile());
				jobs.put(guest.getJob(), JobFile.load(file));
				files.put(guest.getJob(), file);
			} catch (UnreadableJobException | InvalidPathException e) {
				problems.add(NLS.bind(Messages.GuestFiles_unreadable, name, e.getMessage()));
			}
		}
		return new Guests(jobs, files, problems);
	}

	private static String title(Guest guest) {
		String title = guest.getTitle() == null || guest.getTitle().isBlank() ? guest.getJob() : guest.getTitle();
		return guest.getNumber() == null || guest.getNumber().isBlank() ? title : guest.getNumber() + " " + title;
	}

	private static Path resolved(Path hostFile, String file) {
		return hostFile == null ? Path.of(file) : hostFile.resolveSibling(file).normalize();
	}

	/** A file as a guest's is written: as seen from the host's folder, with slashes; the whole path if there is no such way. */
	public static String relative(Path hostFile, Path file) {
		Path folder = hostFile.toAbsolutePath().normalize().getParent();
		Path whole = file.toAbsolutePath().normalize();
		String text = folder == null || !folder.getRoot().equals(whole.getRoot()) ? whole.toString()
				: folder.relativize(whole).toString();
		return text.replace(whole.getFileSystem().getSeparator(), "/");
	}

	/**
	 * A guest as it is written into its host, not yet in it.
	 *
	 * @param among    the other guests, which have their ids already
	 * @param hostFile where the host's file is or will be
	 */
	public static Guest guest(Job host, List<Guest> among, Path hostFile, Job job, Path file) {
		Set<String> taken = new HashSet<>();
		taken.add(host.getId());
		among.forEach(guest -> taken.add(guest.getJob()));
		String id = job.getId();
		for (int i = 2; taken.contains(id); i++) {
			id = job.getId() + "-" + i;
		}
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob(id);
		guest.setNumber(job.getNumber());
		guest.setTitle(job.getTitle());
		guest.setFile(relative(hostFile, file));
		return guest;
	}
}

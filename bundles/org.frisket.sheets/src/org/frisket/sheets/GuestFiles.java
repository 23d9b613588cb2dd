package org.frisket.sheets;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.UnreadableJobException;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;

/**
 * The other jobs on a job's sheets: in files beside its own, or, where none is named, in the order book. Within its host a guest is known by its id; if the host or
 * another guest has the same, with a number behind it.
 */
public final class GuestFiles {

	/**
	 * Guests as far as they could be read.
	 *
	 * @param jobs     by {@link Guest#getJob()}, in the order of the host
	 * @param files    where each of them is; those of the order book have none
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

	/** Where jobs are that have no file: they are known by their ids. */
	@FunctionalInterface
	public interface Shelf {

		/**
		 * Those of these jobs that are there, by id.
		 *
		 * @throws IOException with a message for people, if they cannot be looked up
		 */
		Map<String, Job> jobs(Collection<String> ids) throws IOException;

		/** The order book of a studio, as it is when it is asked. */
		static Shelf of(StudioFolder studio) {
			return ids -> {
				try {
					Map<String, Job> jobs = new LinkedHashMap<>();
					new OrderBook(studio).open(ids).forEach((id, stored) -> jobs.put(id, stored.job()));
					return jobs;
				} catch (OrderException damaged) {
					throw new IOException(damaged.getMessage(), damaged);
				}
			};
		}
	}

	private GuestFiles() {
	}

	/**
	 * Reads the guests of a job. One that cannot be read is a problem, and the others are there. Those without a file are
	 * looked for in the studio's order book, which is not opened unless there are such.
	 *
	 * @param hostFile where the job's own file is; null for one without, whose guests need absolute paths
	 */
	public static Guests load(Job host, Path hostFile) {
		return load(host, hostFile, Shelf.of(Studio.folder()));
	}

	/** The same. @param shelf where the jobs are that have no file */
	public static Guests load(Job host, Path hostFile, Shelf shelf) {
		Map<String, Job> jobs = new LinkedHashMap<>();
		Map<String, Path> files = new LinkedHashMap<>();
		List<String> problems = new ArrayList<>();
		Map<String, Job> shelved = shelved(host, shelf, problems);
		for (Guest guest : host.getGuests()) {
			String name = title(guest);
			if (isShelved(guest)) {
				Job job = shelved.get(guest.getJob());
				if (job != null) {
					jobs.put(guest.getJob(), job);
				} else {
					problems.add(NLS.bind(Messages.GuestFiles_noFile, name));
				}
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

	private static boolean isShelved(Guest guest) {
		return guest.getFile() == null || guest.getFile().isBlank();
	}

	/** Of the guests without a file, those that can be had. */
	private static Map<String, Job> shelved(Job host, Shelf shelf, List<String> problems) {
		List<String> ids = host.getGuests().stream().filter(GuestFiles::isShelved).map(Guest::getJob)
				.filter(Objects::nonNull).toList();
		try {
			return ids.isEmpty() ? Map.of() : shelf.jobs(ids);
		} catch (IOException unreadable) {
			problems.add(unreadable.getMessage());
			return Map.of();
		}
	}

	/** A job of the order book as a guest, not yet in its host: known there by its id, wherever the host is kept. */
	public static Guest shelved(Job job) {
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob(job.getId());
		guest.setNumber(job.getNumber());
		guest.setTitle(job.getTitle());
		return guest;
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

package org.frisket.ui.orders.internal.exchange;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.model.JobFile;
import org.frisket.orders.OrderException;
import org.frisket.orders.exchange.XjdfWriter;
import org.frisket.orders.paper.TicketMaker;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;

/** As what a job leaves the order book. */
enum HandOutKind {

	/** For the systems of others. */
	TICKET(XjdfWriter.ENDING, Messages.HandOut_ticket, Messages.HandOut_ticketFile) {
		@Override
		void write(long number, Path file, Monitor monitor) throws IOException, OrderException {
			new TicketMaker(Studio.folder(), new JobPreparer(FontLibraries.installed()), Clock.systemDefaultZone()).write(number,
					List.of(), file, monitor);
		}
	},
	/** Whole, with its pictures. */
	JOB(JobFile.ENDING, Messages.HandOut_job, Messages.HandOut_jobFile) {
		@Override
		void write(long number, Path file, Monitor monitor) throws IOException, OrderException {
			JobFile.save(OrderDesk.book().open(number).job(), file);
		}
	};

	private final String ending;
	private final String title;
	private final String name;

	HandOutKind(String ending, String title, String name) {
		this.ending = ending;
		this.title = title;
		this.name = name;
	}

	String ending() {
		return ending;
	}

	/** Of the window that asks where to. */
	String title() {
		return title;
	}

	/** Of the file of a job, if nobody says otherwise. */
	String file(long number) {
		return NLS.bind(name, Long.toString(number)) + ending;
	}

	/** Off the UI thread only: the whole file or none. */
	abstract void write(long number, Path file, Monitor monitor) throws IOException, OrderException;
}

package org.frisket.ui.orders.internal.docket;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CodeCanvas_name;
	public static String DocketButtons_docket;
	public static String DocketButtons_docketTip;
	public static String DocketButtons_proof;
	public static String DocketButtons_proofTip;
	public static String DocketButtons_quote;
	public static String DocketButtons_quoteTip;
	public static String DocketButtons_stage;
	public static String DocketButtons_stageTip;
	public static String DocketButtons_ticket;
	public static String DocketButtons_ticketTip;
	public static String DocketButtons_undo;
	public static String DocketButtons_undoTip;
	public static String DocketJob_failed;
	public static String DocketJob_name;
	public static String DocketLines_agreement;
	public static String DocketLines_all;
	public static String DocketLines_blocked;
	public static String DocketLines_change;
	public static String DocketLines_customer;
	public static String DocketLines_due;
	public static String DocketLines_each;
	public static String DocketLines_history;
	public static String DocketLines_late;
	public static String DocketLines_mind;
	public static String DocketLines_more;
	public static String DocketLines_noDay;
	public static String DocketLines_notYet;
	public static String DocketLines_notes;
	public static String DocketLines_nothingDesigned;
	public static String DocketLines_papers;
	public static String DocketLines_parts;
	public static String DocketLines_quantity;
	public static String DocketLines_reading;
	public static String DocketLines_sheets;
	public static String DocketLines_signed;
	public static String DocketLines_size;
	public static String DocketLines_stage;
	public static String DocketLines_stageSince;
	public static String DocketLines_time;
	public static String DocketLines_unknown;
	public static String DocketLines_used;
	public static String DocketLines_work;
	public static String DocketLines_workOf;
	public static String DocketLines_working;
	public static String DocketPage_nothing;
	public static String DocketPage_open;
	public static String PaperRun_cancelled;
	public static String PaperRun_failed;
	public static String PaperRun_name;
	public static String PaperRun_notNoted;
	public static String PaperRun_title;
	public static String PaperRun_writing;
	public static String PaperRun_written;
	public static String PaperWords_docket;
	public static String PaperWords_docketFile;
	public static String PaperWords_proof;
	public static String PaperWords_proofFile;
	public static String PaperWords_quote;
	public static String PaperWords_quoteFile;
	public static String QuoteDialog_agreement;
	public static String QuoteDialog_date;
	public static String QuoteDialog_draft;
	public static String QuoteDialog_keep;
	public static String QuoteDialog_title;
	public static String QuoteDialog_total;
	public static String QuoteDialog_write;
	public static String QuoteDialog_wrong;
	public static String QuotePage_description;
	public static String QuotePage_where;
	public static String QuoteRun_keeping;
	public static String QuoteRun_working;
	public static String Selected_nothing;
	public static String StageDialog_now;
	public static String StageDialog_ok;
	public static String StageDialog_remark;
	public static String StageDialog_title;
	public static String StageMove_againstTitle;
	public static String StageMove_anyway;
	public static String StageMove_done;
	public static String StageMove_leave;
	public static String StageMove_name;
	public static String StageMove_undoName;

	static {
		initializeMessages("org.frisket.ui.orders.internal.docket.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}

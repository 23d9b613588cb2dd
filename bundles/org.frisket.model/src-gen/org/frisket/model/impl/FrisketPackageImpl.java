/**
 */
package org.frisket.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EFactory;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.frisket.model.Alignment;
import org.frisket.model.BackdropRule;
import org.frisket.model.Bar;
import org.frisket.model.BarKind;
import org.frisket.model.BleedKind;
import org.frisket.model.Bridge;
import org.frisket.model.BridgeAngle;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.model.CornerJoin;
import org.frisket.model.EdgeHoles;
import org.frisket.model.Element;
import org.frisket.model.Flow;
import org.frisket.model.FontRef;
import org.frisket.model.FrameKind;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Group;
import org.frisket.model.Guest;
import org.frisket.model.Guide;
import org.frisket.model.HoleRule;
import org.frisket.model.ImageBytes;
import org.frisket.model.IslandBridges;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Laying;
import org.frisket.model.MarkKind;
import org.frisket.model.Mat;
import org.frisket.model.MatForm;
import org.frisket.model.Matrix;
import org.frisket.model.MeasuredMark;
import org.frisket.model.Nudge;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.PenStyle;
import org.frisket.model.Picture;
import org.frisket.model.PictureEdge;
import org.frisket.model.Placement;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.model.TextSpan;
import org.frisket.model.Turning;
import org.frisket.model.WeedLines;
import org.frisket.model.Wording;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see org.frisket.model.FrisketFactory
 * @generated
 */
public class FrisketPackageImpl extends EPackageImpl {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final String eNS_URI = "urn:frisket:job:1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final String eNS_PREFIX = "frisket";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final FrisketPackageImpl eINSTANCE = org.frisket.model.impl.FrisketPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.JobImpl <em>Job</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.JobImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getJob()
	 * @generated
	 */
	public static final int JOB = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__ID = 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__NUMBER = 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__TITLE = 2;

	/**
	 * The feature id for the '<em><b>Customer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__CUSTOMER = 3;

	/**
	 * The feature id for the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__DUE = 4;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__QUANTITY = 5;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__STAGE = 6;

	/**
	 * The feature id for the '<em><b>Notes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__NOTES = 7;

	/**
	 * The feature id for the '<em><b>Layers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__LAYERS = 8;

	/**
	 * The feature id for the '<em><b>History</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__HISTORY = 9;

	/**
	 * The feature id for the '<em><b>Groups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__GROUPS = 10;

	/**
	 * The feature id for the '<em><b>Guides</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__GUIDES = 11;

	/**
	 * The feature id for the '<em><b>Sheets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__SHEETS = 12;

	/**
	 * The feature id for the '<em><b>Guests</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__GUESTS = 13;

	/**
	 * The feature id for the '<em><b>Laying</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__LAYING = 14;

	/**
	 * The feature id for the '<em><b>Repeats</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB__REPEATS = 15;

	/**
	 * The number of structural features of the '<em>Job</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int JOB_FEATURE_COUNT = 16;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.StageChangeImpl <em>Stage Change</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.StageChangeImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getStageChange()
	 * @generated
	 */
	public static final int STAGE_CHANGE = 1;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE__AT = 0;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE__WHO = 1;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE__FROM = 2;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE__TO = 3;

	/**
	 * The feature id for the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE__REMARK = 4;

	/**
	 * The number of structural features of the '<em>Stage Change</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int STAGE_CHANGE_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.SheetImpl <em>Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.SheetImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getSheet()
	 * @generated
	 */
	public static final int SHEET = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__NAME = 1;

	/**
	 * The feature id for the '<em><b>Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__STOCK = 2;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__COLOUR = 3;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__WIDTH = 4;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__HEIGHT = 5;

	/**
	 * The feature id for the '<em><b>Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__MARGIN = 6;

	/**
	 * The feature id for the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__GAP = 7;

	/**
	 * The feature id for the '<em><b>Roll</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__ROLL = 8;

	/**
	 * The feature id for the '<em><b>Leftover</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__LEFTOVER = 9;

	/**
	 * The feature id for the '<em><b>Placements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__PLACEMENTS = 10;

	/**
	 * The feature id for the '<em><b>Print Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__PRINT_MARGIN = 11;

	/**
	 * The feature id for the '<em><b>Printer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__PRINTER = 12;

	/**
	 * The feature id for the '<em><b>Marks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__MARKS = 13;

	/**
	 * The feature id for the '<em><b>Fit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__FIT = 14;

	/**
	 * The feature id for the '<em><b>Measured</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET__MEASURED = 15;

	/**
	 * The number of structural features of the '<em>Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int SHEET_FEATURE_COUNT = 16;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.PlacementImpl <em>Placement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.PlacementImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getPlacement()
	 * @generated
	 */
	public static final int PLACEMENT = 3;

	/**
	 * The feature id for the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__JOB = 0;

	/**
	 * The feature id for the '<em><b>Part</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__PART = 1;

	/**
	 * The feature id for the '<em><b>Copy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__COPY = 2;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__X = 3;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__Y = 4;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__TURN = 5;

	/**
	 * The feature id for the '<em><b>Pinned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT__PINNED = 6;

	/**
	 * The number of structural features of the '<em>Placement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PLACEMENT_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.RegisterMarkImpl <em>Register Mark</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.RegisterMarkImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getRegisterMark()
	 * @generated
	 */
	public static final int REGISTER_MARK = 4;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__KIND = 0;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__X = 1;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__Y = 2;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__TURN = 3;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__SIZE = 4;

	/**
	 * The feature id for the '<em><b>Weight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__WEIGHT = 5;

	/**
	 * The feature id for the '<em><b>Quiet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK__QUIET = 6;

	/**
	 * The number of structural features of the '<em>Register Mark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int REGISTER_MARK_FEATURE_COUNT = 7;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.MeasuredMarkImpl <em>Measured Mark</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.MeasuredMarkImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMeasuredMark()
	 * @generated
	 */
	public static final int MEASURED_MARK = 5;

	/**
	 * The feature id for the '<em><b>Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_MARK__MARK = 0;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_MARK__X = 1;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_MARK__Y = 2;

	/**
	 * The feature id for the '<em><b>Back</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_MARK__BACK = 3;

	/**
	 * The number of structural features of the '<em>Measured Mark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MEASURED_MARK_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.GuestImpl <em>Guest</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.GuestImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getGuest()
	 * @generated
	 */
	public static final int GUEST = 6;

	/**
	 * The feature id for the '<em><b>Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUEST__JOB = 0;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUEST__NUMBER = 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUEST__TITLE = 2;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUEST__FILE = 3;

	/**
	 * The number of structural features of the '<em>Guest</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUEST_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.LayingImpl <em>Laying</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.LayingImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getLaying()
	 * @generated
	 */
	public static final int LAYING = 7;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__WIDTH = 0;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__HEIGHT = 1;

	/**
	 * The feature id for the '<em><b>Roll</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__ROLL = 2;

	/**
	 * The feature id for the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__GAP = 3;

	/**
	 * The feature id for the '<em><b>Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__MARGIN = 4;

	/**
	 * The feature id for the '<em><b>Turning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__TURNING = 5;

	/**
	 * The feature id for the '<em><b>Apart</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__APART = 6;

	/**
	 * The feature id for the '<em><b>By Job</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__BY_JOB = 7;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING__SEED = 8;

	/**
	 * The number of structural features of the '<em>Laying</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYING_FEATURE_COUNT = 9;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.LayerImpl <em>Layer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.LayerImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getLayer()
	 * @generated
	 */
	public static final int LAYER = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__NAME = 1;

	/**
	 * The feature id for the '<em><b>Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__STOCK = 2;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__COLOUR = 3;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__VISIBLE = 4;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__LOCKED = 5;

	/**
	 * The feature id for the '<em><b>Elements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__ELEMENTS = 6;

	/**
	 * The feature id for the '<em><b>Back</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER__BACK = 7;

	/**
	 * The number of structural features of the '<em>Layer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int LAYER_FEATURE_COUNT = 8;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.ElementImpl <em>Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.ElementImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getElement()
	 * @generated
	 */
	public static final int ELEMENT = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__NAME = 1;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__TRANSFORM = 2;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__OPERATIONS = 3;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__VISIBLE = 4;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT__LOCKED = 5;

	/**
	 * The number of structural features of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ELEMENT_FEATURE_COUNT = 6;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.GroupImpl <em>Group</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.GroupImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getGroup()
	 * @generated
	 */
	public static final int GROUP = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GROUP__ID = 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GROUP__NAME = 1;

	/**
	 * The feature id for the '<em><b>Elements</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GROUP__ELEMENTS = 2;

	/**
	 * The feature id for the '<em><b>Groups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GROUP__GROUPS = 3;

	/**
	 * The number of structural features of the '<em>Group</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GROUP_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.GuideImpl <em>Guide</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.GuideImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getGuide()
	 * @generated
	 */
	public static final int GUIDE = 11;

	/**
	 * The feature id for the '<em><b>Across</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE__ACROSS = 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE__AT = 1;

	/**
	 * The number of structural features of the '<em>Guide</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.OperationImpl <em>Operation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.OperationImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getOperation()
	 * @generated
	 */
	public static final int OPERATION = 12;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION__KIND = 0;

	/**
	 * The feature id for the '<em><b>Tool</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION__TOOL = 1;

	/**
	 * The feature id for the '<em><b>Passes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION__PASSES = 2;

	/**
	 * The feature id for the '<em><b>Dash</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION__DASH = 3;

	/**
	 * The feature id for the '<em><b>Gap</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION__GAP = 4;

	/**
	 * The number of structural features of the '<em>Operation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.WordingImpl <em>Wording</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.WordingImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getWording()
	 * @generated
	 */
	public static final int WORDING = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TEXT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Font</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__FONT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__HEIGHT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Line Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__LINE_SPACING = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Tracking</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TRACKING = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Alignment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ALIGNMENT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Kerning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__KERNING = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Ligatures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__LIGATURES = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Joined</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__JOINED = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Touch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TOUCH = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Features</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__FEATURES = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Axes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__AXES = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Word Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__WORD_SPACING = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Measure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__MEASURE = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Spans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__SPANS = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Nudges</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__NUDGES = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__FLOW = ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Arc Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ARC_RADIUS = ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Arc Angle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ARC_ANGLE = ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Arc Inside</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ARC_INSIDE = ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Arc Inward</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ARC_INWARD = ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Path</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__PATH = ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Path Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__PATH_START = ELEMENT_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Path Reversed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__PATH_REVERSED = ELEMENT_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Path Hanging</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__PATH_HANGING = ELEMENT_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Box Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__BOX_WIDTH = ELEMENT_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Box Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__BOX_HEIGHT = ELEMENT_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Embolden</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__EMBOLDEN = ELEMENT_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Bars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__BARS = ELEMENT_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Tie Marks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TIE_MARKS = ELEMENT_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Tie Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__TIE_WIDTH = ELEMENT_FEATURE_COUNT + 30;

	/**
	 * The feature id for the '<em><b>Stencil</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__STENCIL = ELEMENT_FEATURE_COUNT + 31;

	/**
	 * The feature id for the '<em><b>Pen Style</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__PEN_STYLE = ELEMENT_FEATURE_COUNT + 32;

	/**
	 * The feature id for the '<em><b>Hatch Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__HATCH_SPACING = ELEMENT_FEATURE_COUNT + 33;

	/**
	 * The feature id for the '<em><b>Hatch Angle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__HATCH_ANGLE = ELEMENT_FEATURE_COUNT + 34;

	/**
	 * The feature id for the '<em><b>Hatch Inset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__HATCH_INSET = ELEMENT_FEATURE_COUNT + 35;

	/**
	 * The feature id for the '<em><b>Bridges</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__BRIDGES = ELEMENT_FEATURE_COUNT + 36;

	/**
	 * The feature id for the '<em><b>Islands</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING__ISLANDS = ELEMENT_FEATURE_COUNT + 37;

	/**
	 * The number of structural features of the '<em>Wording</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WORDING_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 38;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.TextSpanImpl <em>Text Span</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.TextSpanImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getTextSpan()
	 * @generated
	 */
	public static final int TEXT_SPAN = 14;

	/**
	 * The feature id for the '<em><b>Start</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN__START = 0;

	/**
	 * The feature id for the '<em><b>End</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN__END = 1;

	/**
	 * The feature id for the '<em><b>Font</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN__FONT = 2;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN__HEIGHT = 3;

	/**
	 * The feature id for the '<em><b>Features</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN__FEATURES = 4;

	/**
	 * The number of structural features of the '<em>Text Span</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int TEXT_SPAN_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.NudgeImpl <em>Nudge</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.NudgeImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getNudge()
	 * @generated
	 */
	public static final int NUDGE = 15;

	/**
	 * The feature id for the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE__INDEX = 0;

	/**
	 * The feature id for the '<em><b>Dx</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE__DX = 1;

	/**
	 * The feature id for the '<em><b>Dy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE__DY = 2;

	/**
	 * The feature id for the '<em><b>Turn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE__TURN = 3;

	/**
	 * The feature id for the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE__SCALE = 4;

	/**
	 * The number of structural features of the '<em>Nudge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int NUDGE_FEATURE_COUNT = 5;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.BarImpl <em>Bar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.BarImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBar()
	 * @generated
	 */
	public static final int BAR = 16;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BAR__KIND = 0;

	/**
	 * The feature id for the '<em><b>Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BAR__OFFSET = 1;

	/**
	 * The feature id for the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BAR__THICKNESS = 2;

	/**
	 * The feature id for the '<em><b>Overhang</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BAR__OVERHANG = 3;

	/**
	 * The number of structural features of the '<em>Bar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BAR_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.BridgeImpl <em>Bridge</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.BridgeImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBridge()
	 * @generated
	 */
	public static final int BRIDGE = 17;

	/**
	 * The feature id for the '<em><b>One</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__ONE = 0;

	/**
	 * The feature id for the '<em><b>Other</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__OTHER = 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__WIDTH = 2;

	/**
	 * The feature id for the '<em><b>Placed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__PLACED = 3;

	/**
	 * The feature id for the '<em><b>One X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__ONE_X = 4;

	/**
	 * The feature id for the '<em><b>One Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__ONE_Y = 5;

	/**
	 * The feature id for the '<em><b>Other X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__OTHER_X = 6;

	/**
	 * The feature id for the '<em><b>Other Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE__OTHER_Y = 7;

	/**
	 * The number of structural features of the '<em>Bridge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE_FEATURE_COUNT = 8;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.IslandBridgesImpl <em>Island Bridges</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.IslandBridgesImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getIslandBridges()
	 * @generated
	 */
	public static final int ISLAND_BRIDGES = 18;

	/**
	 * The feature id for the '<em><b>Index</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ISLAND_BRIDGES__INDEX = 0;

	/**
	 * The feature id for the '<em><b>Island</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ISLAND_BRIDGES__ISLAND = 1;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ISLAND_BRIDGES__COUNT = 2;

	/**
	 * The feature id for the '<em><b>At</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ISLAND_BRIDGES__AT = 3;

	/**
	 * The number of structural features of the '<em>Island Bridges</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int ISLAND_BRIDGES_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.BridgeAngleImpl <em>Bridge Angle</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.BridgeAngleImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBridgeAngle()
	 * @generated
	 */
	public static final int BRIDGE_ANGLE = 19;

	/**
	 * The feature id for the '<em><b>Angle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE_ANGLE__ANGLE = 0;

	/**
	 * The number of structural features of the '<em>Bridge Angle</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int BRIDGE_ANGLE_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.FontRefImpl <em>Font Ref</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.FontRefImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getFontRef()
	 * @generated
	 */
	public static final int FONT_REF = 20;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int FONT_REF__NAME = 0;

	/**
	 * The feature id for the '<em><b>Style</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int FONT_REF__STYLE = 1;

	/**
	 * The feature id for the '<em><b>Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int FONT_REF__DIGEST = 2;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int FONT_REF__FILE = 3;

	/**
	 * The number of structural features of the '<em>Font Ref</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int FONT_REF_FEATURE_COUNT = 4;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.OutlineImpl <em>Outline</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.OutlineImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getOutline()
	 * @generated
	 */
	public static final int OUTLINE = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Path Data</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__PATH_DATA = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Corner Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE__CORNER_RADIUS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Outline</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int OUTLINE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.PictureImpl <em>Picture</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.PictureImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getPicture()
	 * @generated
	 */
	public static final int PICTURE = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Image</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__IMAGE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__MEDIA_TYPE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__WIDTH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__HEIGHT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Link</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__LINK = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Edge</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__EDGE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Bleed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__BLEED = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Bleed Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE__BLEED_KIND = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Picture</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.PictureEdgeImpl <em>Picture Edge</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.PictureEdgeImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getPictureEdge()
	 * @generated
	 */
	public static final int PICTURE_EDGE = 23;

	/**
	 * The feature id for the '<em><b>Backdrop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__BACKDROP = 0;

	/**
	 * The feature id for the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__COLOUR = 1;

	/**
	 * The feature id for the '<em><b>Difference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__DIFFERENCE = 2;

	/**
	 * The feature id for the '<em><b>Shadow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__SHADOW = 3;

	/**
	 * The feature id for the '<em><b>Specks</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__SPECKS = 4;

	/**
	 * The feature id for the '<em><b>Holes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__HOLES = 5;

	/**
	 * The feature id for the '<em><b>Smoothing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__SMOOTHING = 6;

	/**
	 * The feature id for the '<em><b>Border</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__BORDER = 7;

	/**
	 * The feature id for the '<em><b>Whole</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE__WHOLE = 8;

	/**
	 * The number of structural features of the '<em>Picture Edge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int PICTURE_EDGE_FEATURE_COUNT = 9;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.MatImpl <em>Mat</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.MatImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMat()
	 * @generated
	 */
	public static final int MAT = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Behind</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__BEHIND = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__DISTANCE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Corners</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__CORNERS = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Mitre Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__MITRE_LIMIT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Holes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__HOLES = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Smoothing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__SMOOTHING = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Form</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__FORM = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__REACH = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Shadow X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__SHADOW_X = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Shadow Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__SHADOW_Y = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Frame Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__FRAME_KIND = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Frame Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__FRAME_MARGIN = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Frame Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__FRAME_WIDTH = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Corner Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__CORNER_RADIUS = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Smallest Hole</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT__SMALLEST_HOLE = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Mat</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int MAT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.CombinationImpl <em>Combination</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.CombinationImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getCombination()
	 * @generated
	 */
	public static final int COMBINATION = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Rule</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__RULE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Parts</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__PARTS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Corner Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION__CORNER_RADIUS = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Combination</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int COMBINATION_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.frisket.model.impl.WeedLinesImpl <em>Weed Lines</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.WeedLinesImpl
	 * @see org.frisket.model.impl.FrisketPackageImpl#getWeedLines()
	 * @generated
	 */
	public static final int WEED_LINES = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__NAME = ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Transform</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__TRANSFORM = ELEMENT__TRANSFORM;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__OPERATIONS = ELEMENT__OPERATIONS;

	/**
	 * The feature id for the '<em><b>Visible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__VISIBLE = ELEMENT__VISIBLE;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__LOCKED = ELEMENT__LOCKED;

	/**
	 * The feature id for the '<em><b>Around</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__AROUND = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Margin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__MARGIN = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Between</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__BETWEEN = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Spacing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__SPACING = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Clearance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES__CLEARANCE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Weed Lines</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	public static final int WEED_LINES_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.frisket.model.Stage <em>Stage</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.Stage
	 * @see org.frisket.model.impl.FrisketPackageImpl#getStage()
	 * @generated
	 */
	public static final int STAGE = 27;

	/**
	 * The meta object id for the '{@link org.frisket.model.MarkKind <em>Mark Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.MarkKind
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMarkKind()
	 * @generated
	 */
	public static final int MARK_KIND = 28;

	/**
	 * The meta object id for the '{@link org.frisket.model.SheetFit <em>Sheet Fit</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.SheetFit
	 * @see org.frisket.model.impl.FrisketPackageImpl#getSheetFit()
	 * @generated
	 */
	public static final int SHEET_FIT = 29;

	/**
	 * The meta object id for the '{@link org.frisket.model.Turning <em>Turning</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.Turning
	 * @see org.frisket.model.impl.FrisketPackageImpl#getTurning()
	 * @generated
	 */
	public static final int TURNING = 30;

	/**
	 * The meta object id for the '{@link org.frisket.model.OperationKind <em>Operation Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.OperationKind
	 * @see org.frisket.model.impl.FrisketPackageImpl#getOperationKind()
	 * @generated
	 */
	public static final int OPERATION_KIND = 31;

	/**
	 * The meta object id for the '{@link org.frisket.model.Alignment <em>Alignment</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.Alignment
	 * @see org.frisket.model.impl.FrisketPackageImpl#getAlignment()
	 * @generated
	 */
	public static final int ALIGNMENT = 32;

	/**
	 * The meta object id for the '{@link org.frisket.model.Flow <em>Flow</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.Flow
	 * @see org.frisket.model.impl.FrisketPackageImpl#getFlow()
	 * @generated
	 */
	public static final int FLOW = 33;

	/**
	 * The meta object id for the '{@link org.frisket.model.PenStyle <em>Pen Style</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.PenStyle
	 * @see org.frisket.model.impl.FrisketPackageImpl#getPenStyle()
	 * @generated
	 */
	public static final int PEN_STYLE = 34;

	/**
	 * The meta object id for the '{@link org.frisket.model.BarKind <em>Bar Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.BarKind
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBarKind()
	 * @generated
	 */
	public static final int BAR_KIND = 35;

	/**
	 * The meta object id for the '{@link org.frisket.model.BackdropRule <em>Backdrop Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.BackdropRule
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBackdropRule()
	 * @generated
	 */
	public static final int BACKDROP_RULE = 36;

	/**
	 * The meta object id for the '{@link org.frisket.model.EdgeHoles <em>Edge Holes</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.EdgeHoles
	 * @see org.frisket.model.impl.FrisketPackageImpl#getEdgeHoles()
	 * @generated
	 */
	public static final int EDGE_HOLES = 37;

	/**
	 * The meta object id for the '{@link org.frisket.model.BleedKind <em>Bleed Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.BleedKind
	 * @see org.frisket.model.impl.FrisketPackageImpl#getBleedKind()
	 * @generated
	 */
	public static final int BLEED_KIND = 38;

	/**
	 * The meta object id for the '{@link org.frisket.model.CornerJoin <em>Corner Join</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.CornerJoin
	 * @see org.frisket.model.impl.FrisketPackageImpl#getCornerJoin()
	 * @generated
	 */
	public static final int CORNER_JOIN = 39;

	/**
	 * The meta object id for the '{@link org.frisket.model.HoleRule <em>Hole Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.HoleRule
	 * @see org.frisket.model.impl.FrisketPackageImpl#getHoleRule()
	 * @generated
	 */
	public static final int HOLE_RULE = 40;

	/**
	 * The meta object id for the '{@link org.frisket.model.MatForm <em>Mat Form</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.MatForm
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMatForm()
	 * @generated
	 */
	public static final int MAT_FORM = 41;

	/**
	 * The meta object id for the '{@link org.frisket.model.FrameKind <em>Frame Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.FrameKind
	 * @see org.frisket.model.impl.FrisketPackageImpl#getFrameKind()
	 * @generated
	 */
	public static final int FRAME_KIND = 42;

	/**
	 * The meta object id for the '{@link org.frisket.model.CombinationRule <em>Combination Rule</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.CombinationRule
	 * @see org.frisket.model.impl.FrisketPackageImpl#getCombinationRule()
	 * @generated
	 */
	public static final int COMBINATION_RULE = 43;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see org.frisket.model.impl.FrisketPackageImpl#getDate()
	 * @generated
	 */
	public static final int DATE = 44;

	/**
	 * The meta object id for the '<em>Moment</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.Instant
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMoment()
	 * @generated
	 */
	public static final int MOMENT = 45;

	/**
	 * The meta object id for the '<em>Matrix</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.Matrix
	 * @see org.frisket.model.impl.FrisketPackageImpl#getMatrix()
	 * @generated
	 */
	public static final int MATRIX = 46;

	/**
	 * The meta object id for the '<em>Image Bytes</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.ImageBytes
	 * @see org.frisket.model.impl.FrisketPackageImpl#getImageBytes()
	 * @generated
	 */
	public static final int IMAGE_BYTES = 47;

	/**
	 * The meta object id for the '<em>Number</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.frisket.model.impl.FrisketPackageImpl#getNumber()
	 * @generated
	 */
	public static final int NUMBER = 48;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass jobEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stageChangeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sheetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass placementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass registerMarkEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass measuredMarkEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass guestEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass layingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass layerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass elementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass groupEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass guideEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass operationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass wordingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass textSpanEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass nudgeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass barEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass bridgeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass islandBridgesEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass bridgeAngleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fontRefEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass outlineEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pictureEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pictureEdgeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass matEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass combinationEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass weedLinesEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum stageEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum markKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum sheetFitEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum turningEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum operationKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum alignmentEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum flowEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum penStyleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum barKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum backdropRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum edgeHolesEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum bleedKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum cornerJoinEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum holeRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum matFormEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum frameKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum combinationRuleEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType momentEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType matrixEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType imageBytesEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType numberEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.frisket.model.impl.FrisketPackageImpl#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private FrisketPackageImpl() {
		super(eNS_URI, ((EFactory)FrisketFactory.INSTANCE));
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link FrisketPackageImpl#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static FrisketPackageImpl init() {
		if (isInited) return (FrisketPackageImpl)EPackage.Registry.INSTANCE.getEPackage(FrisketPackageImpl.eNS_URI);

		// Obtain or create and register package
		Object registeredFrisketPackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		FrisketPackageImpl theFrisketPackage = registeredFrisketPackage instanceof FrisketPackageImpl ? (FrisketPackageImpl)registeredFrisketPackage : new FrisketPackageImpl();

		isInited = true;

		// Create package meta-data objects
		theFrisketPackage.createPackageContents();

		// Initialize created meta-data
		theFrisketPackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theFrisketPackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(FrisketPackageImpl.eNS_URI, theFrisketPackage);
		return theFrisketPackage;
	}


	/**
	 * Returns the meta object for class '{@link org.frisket.model.Job <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Job</em>'.
	 * @see org.frisket.model.Job
	 * @generated
	 */
	public EClass getJob() {
		return jobEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.frisket.model.Job#getId()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Id() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see org.frisket.model.Job#getNumber()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Number() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.frisket.model.Job#getTitle()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Title() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getCustomer <em>Customer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Customer</em>'.
	 * @see org.frisket.model.Job#getCustomer()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Customer() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getDue <em>Due</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Due</em>'.
	 * @see org.frisket.model.Job#getDue()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Due() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.frisket.model.Job#getQuantity()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Quantity() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stage</em>'.
	 * @see org.frisket.model.Job#getStage()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Stage() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Job#getNotes <em>Notes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Notes</em>'.
	 * @see org.frisket.model.Job#getNotes()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Notes() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getLayers <em>Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Layers</em>'.
	 * @see org.frisket.model.Job#getLayers()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Layers() {
		return (EReference)jobEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getHistory <em>History</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>History</em>'.
	 * @see org.frisket.model.Job#getHistory()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_History() {
		return (EReference)jobEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getGroups <em>Groups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Groups</em>'.
	 * @see org.frisket.model.Job#getGroups()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Groups() {
		return (EReference)jobEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getGuides <em>Guides</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Guides</em>'.
	 * @see org.frisket.model.Job#getGuides()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Guides() {
		return (EReference)jobEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sheets</em>'.
	 * @see org.frisket.model.Job#getSheets()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Sheets() {
		return (EReference)jobEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Job#getGuests <em>Guests</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Guests</em>'.
	 * @see org.frisket.model.Job#getGuests()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Guests() {
		return (EReference)jobEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * Returns the meta object for the containment reference '{@link org.frisket.model.Job#getLaying <em>Laying</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Laying</em>'.
	 * @see org.frisket.model.Job#getLaying()
	 * @see #getJob()
	 * @generated
	 */
	public EReference getJob_Laying() {
		return (EReference)jobEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * Returns the meta object for the attribute list '{@link org.frisket.model.Job#getRepeats <em>Repeats</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Repeats</em>'.
	 * @see org.frisket.model.Job#getRepeats()
	 * @see #getJob()
	 * @generated
	 */
	public EAttribute getJob_Repeats() {
		return (EAttribute)jobEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.StageChange <em>Stage Change</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stage Change</em>'.
	 * @see org.frisket.model.StageChange
	 * @generated
	 */
	public EClass getStageChange() {
		return stageChangeEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.StageChange#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.frisket.model.StageChange#getAt()
	 * @see #getStageChange()
	 * @generated
	 */
	public EAttribute getStageChange_At() {
		return (EAttribute)stageChangeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.StageChange#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.frisket.model.StageChange#getWho()
	 * @see #getStageChange()
	 * @generated
	 */
	public EAttribute getStageChange_Who() {
		return (EAttribute)stageChangeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.StageChange#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.frisket.model.StageChange#getFrom()
	 * @see #getStageChange()
	 * @generated
	 */
	public EAttribute getStageChange_From() {
		return (EAttribute)stageChangeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.StageChange#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.frisket.model.StageChange#getTo()
	 * @see #getStageChange()
	 * @generated
	 */
	public EAttribute getStageChange_To() {
		return (EAttribute)stageChangeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.StageChange#getRemark <em>Remark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remark</em>'.
	 * @see org.frisket.model.StageChange#getRemark()
	 * @see #getStageChange()
	 * @generated
	 */
	public EAttribute getStageChange_Remark() {
		return (EAttribute)stageChangeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Sheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet</em>'.
	 * @see org.frisket.model.Sheet
	 * @generated
	 */
	public EClass getSheet() {
		return sheetEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.frisket.model.Sheet#getId()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Id() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.frisket.model.Sheet#getName()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Name() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getStock <em>Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stock</em>'.
	 * @see org.frisket.model.Sheet#getStock()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Stock() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see org.frisket.model.Sheet#getColour()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Colour() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.frisket.model.Sheet#getWidth()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Width() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.frisket.model.Sheet#getHeight()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Height() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getMargin <em>Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin</em>'.
	 * @see org.frisket.model.Sheet#getMargin()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Margin() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getGap <em>Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap</em>'.
	 * @see org.frisket.model.Sheet#getGap()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Gap() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#isRoll <em>Roll</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Roll</em>'.
	 * @see org.frisket.model.Sheet#isRoll()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Roll() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getLeftover <em>Leftover</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leftover</em>'.
	 * @see org.frisket.model.Sheet#getLeftover()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Leftover() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Sheet#getPlacements <em>Placements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Placements</em>'.
	 * @see org.frisket.model.Sheet#getPlacements()
	 * @see #getSheet()
	 * @generated
	 */
	public EReference getSheet_Placements() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getPrintMargin <em>Print Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Print Margin</em>'.
	 * @see org.frisket.model.Sheet#getPrintMargin()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_PrintMargin() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getPrinter <em>Printer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Printer</em>'.
	 * @see org.frisket.model.Sheet#getPrinter()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Printer() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Sheet#getMarks <em>Marks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Marks</em>'.
	 * @see org.frisket.model.Sheet#getMarks()
	 * @see #getSheet()
	 * @generated
	 */
	public EReference getSheet_Marks() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Sheet#getFit <em>Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fit</em>'.
	 * @see org.frisket.model.Sheet#getFit()
	 * @see #getSheet()
	 * @generated
	 */
	public EAttribute getSheet_Fit() {
		return (EAttribute)sheetEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Sheet#getMeasured <em>Measured</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Measured</em>'.
	 * @see org.frisket.model.Sheet#getMeasured()
	 * @see #getSheet()
	 * @generated
	 */
	public EReference getSheet_Measured() {
		return (EReference)sheetEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placement</em>'.
	 * @see org.frisket.model.Placement
	 * @generated
	 */
	public EClass getPlacement() {
		return placementEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getJob <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Job</em>'.
	 * @see org.frisket.model.Placement#getJob()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Job() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getPart <em>Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part</em>'.
	 * @see org.frisket.model.Placement#getPart()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Part() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getCopy <em>Copy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Copy</em>'.
	 * @see org.frisket.model.Placement#getCopy()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Copy() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see org.frisket.model.Placement#getX()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_X() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see org.frisket.model.Placement#getY()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Y() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see org.frisket.model.Placement#getTurn()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Turn() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Placement#isPinned <em>Pinned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pinned</em>'.
	 * @see org.frisket.model.Placement#isPinned()
	 * @see #getPlacement()
	 * @generated
	 */
	public EAttribute getPlacement_Pinned() {
		return (EAttribute)placementEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.RegisterMark <em>Register Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Register Mark</em>'.
	 * @see org.frisket.model.RegisterMark
	 * @generated
	 */
	public EClass getRegisterMark() {
		return registerMarkEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.frisket.model.RegisterMark#getKind()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Kind() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see org.frisket.model.RegisterMark#getX()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_X() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see org.frisket.model.RegisterMark#getY()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Y() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see org.frisket.model.RegisterMark#getTurn()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Turn() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.frisket.model.RegisterMark#getSize()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Size() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getWeight <em>Weight</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weight</em>'.
	 * @see org.frisket.model.RegisterMark#getWeight()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Weight() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.RegisterMark#getQuiet <em>Quiet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quiet</em>'.
	 * @see org.frisket.model.RegisterMark#getQuiet()
	 * @see #getRegisterMark()
	 * @generated
	 */
	public EAttribute getRegisterMark_Quiet() {
		return (EAttribute)registerMarkEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.MeasuredMark <em>Measured Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measured Mark</em>'.
	 * @see org.frisket.model.MeasuredMark
	 * @generated
	 */
	public EClass getMeasuredMark() {
		return measuredMarkEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.MeasuredMark#getMark <em>Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mark</em>'.
	 * @see org.frisket.model.MeasuredMark#getMark()
	 * @see #getMeasuredMark()
	 * @generated
	 */
	public EAttribute getMeasuredMark_Mark() {
		return (EAttribute)measuredMarkEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.MeasuredMark#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see org.frisket.model.MeasuredMark#getX()
	 * @see #getMeasuredMark()
	 * @generated
	 */
	public EAttribute getMeasuredMark_X() {
		return (EAttribute)measuredMarkEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.MeasuredMark#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see org.frisket.model.MeasuredMark#getY()
	 * @see #getMeasuredMark()
	 * @generated
	 */
	public EAttribute getMeasuredMark_Y() {
		return (EAttribute)measuredMarkEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.MeasuredMark#isBack <em>Back</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Back</em>'.
	 * @see org.frisket.model.MeasuredMark#isBack()
	 * @see #getMeasuredMark()
	 * @generated
	 */
	public EAttribute getMeasuredMark_Back() {
		return (EAttribute)measuredMarkEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Guest <em>Guest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Guest</em>'.
	 * @see org.frisket.model.Guest
	 * @generated
	 */
	public EClass getGuest() {
		return guestEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guest#getJob <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Job</em>'.
	 * @see org.frisket.model.Guest#getJob()
	 * @see #getGuest()
	 * @generated
	 */
	public EAttribute getGuest_Job() {
		return (EAttribute)guestEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guest#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see org.frisket.model.Guest#getNumber()
	 * @see #getGuest()
	 * @generated
	 */
	public EAttribute getGuest_Number() {
		return (EAttribute)guestEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guest#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.frisket.model.Guest#getTitle()
	 * @see #getGuest()
	 * @generated
	 */
	public EAttribute getGuest_Title() {
		return (EAttribute)guestEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guest#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see org.frisket.model.Guest#getFile()
	 * @see #getGuest()
	 * @generated
	 */
	public EAttribute getGuest_File() {
		return (EAttribute)guestEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Laying <em>Laying</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Laying</em>'.
	 * @see org.frisket.model.Laying
	 * @generated
	 */
	public EClass getLaying() {
		return layingEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.frisket.model.Laying#getWidth()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Width() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.frisket.model.Laying#getHeight()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Height() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#isRoll <em>Roll</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Roll</em>'.
	 * @see org.frisket.model.Laying#isRoll()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Roll() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getGap <em>Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap</em>'.
	 * @see org.frisket.model.Laying#getGap()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Gap() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getMargin <em>Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin</em>'.
	 * @see org.frisket.model.Laying#getMargin()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Margin() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getTurning <em>Turning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turning</em>'.
	 * @see org.frisket.model.Laying#getTurning()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Turning() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#isApart <em>Apart</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Apart</em>'.
	 * @see org.frisket.model.Laying#isApart()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Apart() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#isByJob <em>By Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By Job</em>'.
	 * @see org.frisket.model.Laying#isByJob()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_ByJob() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Laying#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see org.frisket.model.Laying#getSeed()
	 * @see #getLaying()
	 * @generated
	 */
	public EAttribute getLaying_Seed() {
		return (EAttribute)layingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Layer <em>Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Layer</em>'.
	 * @see org.frisket.model.Layer
	 * @generated
	 */
	public EClass getLayer() {
		return layerEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.frisket.model.Layer#getId()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Id() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.frisket.model.Layer#getName()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Name() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#getStock <em>Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stock</em>'.
	 * @see org.frisket.model.Layer#getStock()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Stock() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see org.frisket.model.Layer#getColour()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Colour() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#isVisible <em>Visible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Visible</em>'.
	 * @see org.frisket.model.Layer#isVisible()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Visible() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#isLocked <em>Locked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked</em>'.
	 * @see org.frisket.model.Layer#isLocked()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Locked() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Layer#getElements <em>Elements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Elements</em>'.
	 * @see org.frisket.model.Layer#getElements()
	 * @see #getLayer()
	 * @generated
	 */
	public EReference getLayer_Elements() {
		return (EReference)layerEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Layer#isBack <em>Back</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Back</em>'.
	 * @see org.frisket.model.Layer#isBack()
	 * @see #getLayer()
	 * @generated
	 */
	public EAttribute getLayer_Back() {
		return (EAttribute)layerEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Element</em>'.
	 * @see org.frisket.model.Element
	 * @generated
	 */
	public EClass getElement() {
		return elementEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Element#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.frisket.model.Element#getId()
	 * @see #getElement()
	 * @generated
	 */
	public EAttribute getElement_Id() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Element#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.frisket.model.Element#getName()
	 * @see #getElement()
	 * @generated
	 */
	public EAttribute getElement_Name() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Element#getTransform <em>Transform</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Transform</em>'.
	 * @see org.frisket.model.Element#getTransform()
	 * @see #getElement()
	 * @generated
	 */
	public EAttribute getElement_Transform() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Element#getOperations <em>Operations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Operations</em>'.
	 * @see org.frisket.model.Element#getOperations()
	 * @see #getElement()
	 * @generated
	 */
	public EReference getElement_Operations() {
		return (EReference)elementEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Element#isVisible <em>Visible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Visible</em>'.
	 * @see org.frisket.model.Element#isVisible()
	 * @see #getElement()
	 * @generated
	 */
	public EAttribute getElement_Visible() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Element#isLocked <em>Locked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked</em>'.
	 * @see org.frisket.model.Element#isLocked()
	 * @see #getElement()
	 * @generated
	 */
	public EAttribute getElement_Locked() {
		return (EAttribute)elementEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Group <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Group</em>'.
	 * @see org.frisket.model.Group
	 * @generated
	 */
	public EClass getGroup() {
		return groupEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Group#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.frisket.model.Group#getId()
	 * @see #getGroup()
	 * @generated
	 */
	public EAttribute getGroup_Id() {
		return (EAttribute)groupEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Group#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.frisket.model.Group#getName()
	 * @see #getGroup()
	 * @generated
	 */
	public EAttribute getGroup_Name() {
		return (EAttribute)groupEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the reference list '{@link org.frisket.model.Group#getElements <em>Elements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Elements</em>'.
	 * @see org.frisket.model.Group#getElements()
	 * @see #getGroup()
	 * @generated
	 */
	public EReference getGroup_Elements() {
		return (EReference)groupEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Group#getGroups <em>Groups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Groups</em>'.
	 * @see org.frisket.model.Group#getGroups()
	 * @see #getGroup()
	 * @generated
	 */
	public EReference getGroup_Groups() {
		return (EReference)groupEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Guide <em>Guide</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Guide</em>'.
	 * @see org.frisket.model.Guide
	 * @generated
	 */
	public EClass getGuide() {
		return guideEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guide#isAcross <em>Across</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Across</em>'.
	 * @see org.frisket.model.Guide#isAcross()
	 * @see #getGuide()
	 * @generated
	 */
	public EAttribute getGuide_Across() {
		return (EAttribute)guideEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Guide#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.frisket.model.Guide#getAt()
	 * @see #getGuide()
	 * @generated
	 */
	public EAttribute getGuide_At() {
		return (EAttribute)guideEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Operation <em>Operation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Operation</em>'.
	 * @see org.frisket.model.Operation
	 * @generated
	 */
	public EClass getOperation() {
		return operationEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Operation#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.frisket.model.Operation#getKind()
	 * @see #getOperation()
	 * @generated
	 */
	public EAttribute getOperation_Kind() {
		return (EAttribute)operationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Operation#getTool <em>Tool</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tool</em>'.
	 * @see org.frisket.model.Operation#getTool()
	 * @see #getOperation()
	 * @generated
	 */
	public EAttribute getOperation_Tool() {
		return (EAttribute)operationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Operation#getPasses <em>Passes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Passes</em>'.
	 * @see org.frisket.model.Operation#getPasses()
	 * @see #getOperation()
	 * @generated
	 */
	public EAttribute getOperation_Passes() {
		return (EAttribute)operationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Operation#getDash <em>Dash</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dash</em>'.
	 * @see org.frisket.model.Operation#getDash()
	 * @see #getOperation()
	 * @generated
	 */
	public EAttribute getOperation_Dash() {
		return (EAttribute)operationEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Operation#getGap <em>Gap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap</em>'.
	 * @see org.frisket.model.Operation#getGap()
	 * @see #getOperation()
	 * @generated
	 */
	public EAttribute getOperation_Gap() {
		return (EAttribute)operationEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Wording <em>Wording</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wording</em>'.
	 * @see org.frisket.model.Wording
	 * @generated
	 */
	public EClass getWording() {
		return wordingEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.frisket.model.Wording#getText()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Text() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the containment reference '{@link org.frisket.model.Wording#getFont <em>Font</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Font</em>'.
	 * @see org.frisket.model.Wording#getFont()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Font() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.frisket.model.Wording#getHeight()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Height() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getLineSpacing <em>Line Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line Spacing</em>'.
	 * @see org.frisket.model.Wording#getLineSpacing()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_LineSpacing() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getTracking <em>Tracking</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tracking</em>'.
	 * @see org.frisket.model.Wording#getTracking()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Tracking() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getAlignment <em>Alignment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alignment</em>'.
	 * @see org.frisket.model.Wording#getAlignment()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Alignment() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isKerning <em>Kerning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kerning</em>'.
	 * @see org.frisket.model.Wording#isKerning()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Kerning() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isLigatures <em>Ligatures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ligatures</em>'.
	 * @see org.frisket.model.Wording#isLigatures()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Ligatures() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isJoined <em>Joined</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Joined</em>'.
	 * @see org.frisket.model.Wording#isJoined()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Joined() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getTouch <em>Touch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Touch</em>'.
	 * @see org.frisket.model.Wording#getTouch()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Touch() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getFeatures <em>Features</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Features</em>'.
	 * @see org.frisket.model.Wording#getFeatures()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Features() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getAxes <em>Axes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Axes</em>'.
	 * @see org.frisket.model.Wording#getAxes()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Axes() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getWordSpacing <em>Word Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Word Spacing</em>'.
	 * @see org.frisket.model.Wording#getWordSpacing()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_WordSpacing() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getMeasure <em>Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Measure</em>'.
	 * @see org.frisket.model.Wording#getMeasure()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Measure() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Wording#getSpans <em>Spans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Spans</em>'.
	 * @see org.frisket.model.Wording#getSpans()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Spans() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Wording#getNudges <em>Nudges</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Nudges</em>'.
	 * @see org.frisket.model.Wording#getNudges()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Nudges() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getFlow <em>Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flow</em>'.
	 * @see org.frisket.model.Wording#getFlow()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Flow() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getArcRadius <em>Arc Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arc Radius</em>'.
	 * @see org.frisket.model.Wording#getArcRadius()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_ArcRadius() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getArcAngle <em>Arc Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arc Angle</em>'.
	 * @see org.frisket.model.Wording#getArcAngle()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_ArcAngle() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isArcInside <em>Arc Inside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arc Inside</em>'.
	 * @see org.frisket.model.Wording#isArcInside()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_ArcInside() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isArcInward <em>Arc Inward</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arc Inward</em>'.
	 * @see org.frisket.model.Wording#isArcInward()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_ArcInward() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * Returns the meta object for the reference '{@link org.frisket.model.Wording#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Path</em>'.
	 * @see org.frisket.model.Wording#getPath()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Path() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getPathStart <em>Path Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path Start</em>'.
	 * @see org.frisket.model.Wording#getPathStart()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_PathStart() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isPathReversed <em>Path Reversed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path Reversed</em>'.
	 * @see org.frisket.model.Wording#isPathReversed()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_PathReversed() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isPathHanging <em>Path Hanging</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path Hanging</em>'.
	 * @see org.frisket.model.Wording#isPathHanging()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_PathHanging() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getBoxWidth <em>Box Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Box Width</em>'.
	 * @see org.frisket.model.Wording#getBoxWidth()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_BoxWidth() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getBoxHeight <em>Box Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Box Height</em>'.
	 * @see org.frisket.model.Wording#getBoxHeight()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_BoxHeight() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getEmbolden <em>Embolden</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Embolden</em>'.
	 * @see org.frisket.model.Wording#getEmbolden()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Embolden() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Wording#getBars <em>Bars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bars</em>'.
	 * @see org.frisket.model.Wording#getBars()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Bars() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#isTieMarks <em>Tie Marks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tie Marks</em>'.
	 * @see org.frisket.model.Wording#isTieMarks()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_TieMarks() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getTieWidth <em>Tie Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tie Width</em>'.
	 * @see org.frisket.model.Wording#getTieWidth()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_TieWidth() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getStencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stencil</em>'.
	 * @see org.frisket.model.Wording#getStencil()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_Stencil() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getPenStyle <em>Pen Style</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pen Style</em>'.
	 * @see org.frisket.model.Wording#getPenStyle()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_PenStyle() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getHatchSpacing <em>Hatch Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hatch Spacing</em>'.
	 * @see org.frisket.model.Wording#getHatchSpacing()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_HatchSpacing() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getHatchAngle <em>Hatch Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hatch Angle</em>'.
	 * @see org.frisket.model.Wording#getHatchAngle()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_HatchAngle() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Wording#getHatchInset <em>Hatch Inset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hatch Inset</em>'.
	 * @see org.frisket.model.Wording#getHatchInset()
	 * @see #getWording()
	 * @generated
	 */
	public EAttribute getWording_HatchInset() {
		return (EAttribute)wordingEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Wording#getBridges <em>Bridges</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bridges</em>'.
	 * @see org.frisket.model.Wording#getBridges()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Bridges() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.Wording#getIslands <em>Islands</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Islands</em>'.
	 * @see org.frisket.model.Wording#getIslands()
	 * @see #getWording()
	 * @generated
	 */
	public EReference getWording_Islands() {
		return (EReference)wordingEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.TextSpan <em>Text Span</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Text Span</em>'.
	 * @see org.frisket.model.TextSpan
	 * @generated
	 */
	public EClass getTextSpan() {
		return textSpanEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.TextSpan#getStart <em>Start</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start</em>'.
	 * @see org.frisket.model.TextSpan#getStart()
	 * @see #getTextSpan()
	 * @generated
	 */
	public EAttribute getTextSpan_Start() {
		return (EAttribute)textSpanEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.TextSpan#getEnd <em>End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>End</em>'.
	 * @see org.frisket.model.TextSpan#getEnd()
	 * @see #getTextSpan()
	 * @generated
	 */
	public EAttribute getTextSpan_End() {
		return (EAttribute)textSpanEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the containment reference '{@link org.frisket.model.TextSpan#getFont <em>Font</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Font</em>'.
	 * @see org.frisket.model.TextSpan#getFont()
	 * @see #getTextSpan()
	 * @generated
	 */
	public EReference getTextSpan_Font() {
		return (EReference)textSpanEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.TextSpan#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.frisket.model.TextSpan#getHeight()
	 * @see #getTextSpan()
	 * @generated
	 */
	public EAttribute getTextSpan_Height() {
		return (EAttribute)textSpanEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.TextSpan#getFeatures <em>Features</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Features</em>'.
	 * @see org.frisket.model.TextSpan#getFeatures()
	 * @see #getTextSpan()
	 * @generated
	 */
	public EAttribute getTextSpan_Features() {
		return (EAttribute)textSpanEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Nudge <em>Nudge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Nudge</em>'.
	 * @see org.frisket.model.Nudge
	 * @generated
	 */
	public EClass getNudge() {
		return nudgeEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Nudge#getIndex <em>Index</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Index</em>'.
	 * @see org.frisket.model.Nudge#getIndex()
	 * @see #getNudge()
	 * @generated
	 */
	public EAttribute getNudge_Index() {
		return (EAttribute)nudgeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Nudge#getDx <em>Dx</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dx</em>'.
	 * @see org.frisket.model.Nudge#getDx()
	 * @see #getNudge()
	 * @generated
	 */
	public EAttribute getNudge_Dx() {
		return (EAttribute)nudgeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Nudge#getDy <em>Dy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dy</em>'.
	 * @see org.frisket.model.Nudge#getDy()
	 * @see #getNudge()
	 * @generated
	 */
	public EAttribute getNudge_Dy() {
		return (EAttribute)nudgeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Nudge#getTurn <em>Turn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turn</em>'.
	 * @see org.frisket.model.Nudge#getTurn()
	 * @see #getNudge()
	 * @generated
	 */
	public EAttribute getNudge_Turn() {
		return (EAttribute)nudgeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Nudge#getScale <em>Scale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale</em>'.
	 * @see org.frisket.model.Nudge#getScale()
	 * @see #getNudge()
	 * @generated
	 */
	public EAttribute getNudge_Scale() {
		return (EAttribute)nudgeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Bar <em>Bar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bar</em>'.
	 * @see org.frisket.model.Bar
	 * @generated
	 */
	public EClass getBar() {
		return barEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bar#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.frisket.model.Bar#getKind()
	 * @see #getBar()
	 * @generated
	 */
	public EAttribute getBar_Kind() {
		return (EAttribute)barEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bar#getOffset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset</em>'.
	 * @see org.frisket.model.Bar#getOffset()
	 * @see #getBar()
	 * @generated
	 */
	public EAttribute getBar_Offset() {
		return (EAttribute)barEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bar#getThickness <em>Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Thickness</em>'.
	 * @see org.frisket.model.Bar#getThickness()
	 * @see #getBar()
	 * @generated
	 */
	public EAttribute getBar_Thickness() {
		return (EAttribute)barEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bar#getOverhang <em>Overhang</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overhang</em>'.
	 * @see org.frisket.model.Bar#getOverhang()
	 * @see #getBar()
	 * @generated
	 */
	public EAttribute getBar_Overhang() {
		return (EAttribute)barEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Bridge <em>Bridge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bridge</em>'.
	 * @see org.frisket.model.Bridge
	 * @generated
	 */
	public EClass getBridge() {
		return bridgeEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOne <em>One</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>One</em>'.
	 * @see org.frisket.model.Bridge#getOne()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_One() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOther <em>Other</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Other</em>'.
	 * @see org.frisket.model.Bridge#getOther()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_Other() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.frisket.model.Bridge#getWidth()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_Width() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#isPlaced <em>Placed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Placed</em>'.
	 * @see org.frisket.model.Bridge#isPlaced()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_Placed() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOneX <em>One X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>One X</em>'.
	 * @see org.frisket.model.Bridge#getOneX()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_OneX() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOneY <em>One Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>One Y</em>'.
	 * @see org.frisket.model.Bridge#getOneY()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_OneY() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOtherX <em>Other X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Other X</em>'.
	 * @see org.frisket.model.Bridge#getOtherX()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_OtherX() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Bridge#getOtherY <em>Other Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Other Y</em>'.
	 * @see org.frisket.model.Bridge#getOtherY()
	 * @see #getBridge()
	 * @generated
	 */
	public EAttribute getBridge_OtherY() {
		return (EAttribute)bridgeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.IslandBridges <em>Island Bridges</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Island Bridges</em>'.
	 * @see org.frisket.model.IslandBridges
	 * @generated
	 */
	public EClass getIslandBridges() {
		return islandBridgesEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.IslandBridges#getIndex <em>Index</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Index</em>'.
	 * @see org.frisket.model.IslandBridges#getIndex()
	 * @see #getIslandBridges()
	 * @generated
	 */
	public EAttribute getIslandBridges_Index() {
		return (EAttribute)islandBridgesEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.IslandBridges#getIsland <em>Island</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Island</em>'.
	 * @see org.frisket.model.IslandBridges#getIsland()
	 * @see #getIslandBridges()
	 * @generated
	 */
	public EAttribute getIslandBridges_Island() {
		return (EAttribute)islandBridgesEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.IslandBridges#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.frisket.model.IslandBridges#getCount()
	 * @see #getIslandBridges()
	 * @generated
	 */
	public EAttribute getIslandBridges_Count() {
		return (EAttribute)islandBridgesEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the containment reference list '{@link org.frisket.model.IslandBridges#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>At</em>'.
	 * @see org.frisket.model.IslandBridges#getAt()
	 * @see #getIslandBridges()
	 * @generated
	 */
	public EReference getIslandBridges_At() {
		return (EReference)islandBridgesEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.BridgeAngle <em>Bridge Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bridge Angle</em>'.
	 * @see org.frisket.model.BridgeAngle
	 * @generated
	 */
	public EClass getBridgeAngle() {
		return bridgeAngleEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.BridgeAngle#getAngle <em>Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Angle</em>'.
	 * @see org.frisket.model.BridgeAngle#getAngle()
	 * @see #getBridgeAngle()
	 * @generated
	 */
	public EAttribute getBridgeAngle_Angle() {
		return (EAttribute)bridgeAngleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.FontRef <em>Font Ref</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Font Ref</em>'.
	 * @see org.frisket.model.FontRef
	 * @generated
	 */
	public EClass getFontRef() {
		return fontRefEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.FontRef#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.frisket.model.FontRef#getName()
	 * @see #getFontRef()
	 * @generated
	 */
	public EAttribute getFontRef_Name() {
		return (EAttribute)fontRefEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.FontRef#getStyle <em>Style</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Style</em>'.
	 * @see org.frisket.model.FontRef#getStyle()
	 * @see #getFontRef()
	 * @generated
	 */
	public EAttribute getFontRef_Style() {
		return (EAttribute)fontRefEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.FontRef#getDigest <em>Digest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Digest</em>'.
	 * @see org.frisket.model.FontRef#getDigest()
	 * @see #getFontRef()
	 * @generated
	 */
	public EAttribute getFontRef_Digest() {
		return (EAttribute)fontRefEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.FontRef#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see org.frisket.model.FontRef#getFile()
	 * @see #getFontRef()
	 * @generated
	 */
	public EAttribute getFontRef_File() {
		return (EAttribute)fontRefEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Outline <em>Outline</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Outline</em>'.
	 * @see org.frisket.model.Outline
	 * @generated
	 */
	public EClass getOutline() {
		return outlineEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Outline#getPathData <em>Path Data</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path Data</em>'.
	 * @see org.frisket.model.Outline#getPathData()
	 * @see #getOutline()
	 * @generated
	 */
	public EAttribute getOutline_PathData() {
		return (EAttribute)outlineEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Outline#getCornerRadius <em>Corner Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Corner Radius</em>'.
	 * @see org.frisket.model.Outline#getCornerRadius()
	 * @see #getOutline()
	 * @generated
	 */
	public EAttribute getOutline_CornerRadius() {
		return (EAttribute)outlineEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Picture <em>Picture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Picture</em>'.
	 * @see org.frisket.model.Picture
	 * @generated
	 */
	public EClass getPicture() {
		return pictureEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getImage <em>Image</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Image</em>'.
	 * @see org.frisket.model.Picture#getImage()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_Image() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getMediaType <em>Media Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Media Type</em>'.
	 * @see org.frisket.model.Picture#getMediaType()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_MediaType() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.frisket.model.Picture#getWidth()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_Width() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.frisket.model.Picture#getHeight()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_Height() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getLink <em>Link</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Link</em>'.
	 * @see org.frisket.model.Picture#getLink()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_Link() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the containment reference '{@link org.frisket.model.Picture#getEdge <em>Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Edge</em>'.
	 * @see org.frisket.model.Picture#getEdge()
	 * @see #getPicture()
	 * @generated
	 */
	public EReference getPicture_Edge() {
		return (EReference)pictureEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getBleed <em>Bleed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bleed</em>'.
	 * @see org.frisket.model.Picture#getBleed()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_Bleed() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Picture#getBleedKind <em>Bleed Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bleed Kind</em>'.
	 * @see org.frisket.model.Picture#getBleedKind()
	 * @see #getPicture()
	 * @generated
	 */
	public EAttribute getPicture_BleedKind() {
		return (EAttribute)pictureEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.PictureEdge <em>Picture Edge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Picture Edge</em>'.
	 * @see org.frisket.model.PictureEdge
	 * @generated
	 */
	public EClass getPictureEdge() {
		return pictureEdgeEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getBackdrop <em>Backdrop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Backdrop</em>'.
	 * @see org.frisket.model.PictureEdge#getBackdrop()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Backdrop() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getColour <em>Colour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Colour</em>'.
	 * @see org.frisket.model.PictureEdge#getColour()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Colour() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getDifference <em>Difference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Difference</em>'.
	 * @see org.frisket.model.PictureEdge#getDifference()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Difference() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getShadow <em>Shadow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shadow</em>'.
	 * @see org.frisket.model.PictureEdge#getShadow()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Shadow() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getSpecks <em>Specks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specks</em>'.
	 * @see org.frisket.model.PictureEdge#getSpecks()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Specks() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getHoles <em>Holes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Holes</em>'.
	 * @see org.frisket.model.PictureEdge#getHoles()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Holes() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getSmoothing <em>Smoothing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Smoothing</em>'.
	 * @see org.frisket.model.PictureEdge#getSmoothing()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Smoothing() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#getBorder <em>Border</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Border</em>'.
	 * @see org.frisket.model.PictureEdge#getBorder()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Border() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.PictureEdge#isWhole <em>Whole</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Whole</em>'.
	 * @see org.frisket.model.PictureEdge#isWhole()
	 * @see #getPictureEdge()
	 * @generated
	 */
	public EAttribute getPictureEdge_Whole() {
		return (EAttribute)pictureEdgeEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Mat <em>Mat</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mat</em>'.
	 * @see org.frisket.model.Mat
	 * @generated
	 */
	public EClass getMat() {
		return matEClass;
	}

	/**
	 * Returns the meta object for the reference list '{@link org.frisket.model.Mat#getBehind <em>Behind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Behind</em>'.
	 * @see org.frisket.model.Mat#getBehind()
	 * @see #getMat()
	 * @generated
	 */
	public EReference getMat_Behind() {
		return (EReference)matEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getDistance <em>Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance</em>'.
	 * @see org.frisket.model.Mat#getDistance()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Distance() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getCorners <em>Corners</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Corners</em>'.
	 * @see org.frisket.model.Mat#getCorners()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Corners() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getMitreLimit <em>Mitre Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mitre Limit</em>'.
	 * @see org.frisket.model.Mat#getMitreLimit()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_MitreLimit() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getHoles <em>Holes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Holes</em>'.
	 * @see org.frisket.model.Mat#getHoles()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Holes() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getSmoothing <em>Smoothing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Smoothing</em>'.
	 * @see org.frisket.model.Mat#getSmoothing()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Smoothing() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getForm <em>Form</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Form</em>'.
	 * @see org.frisket.model.Mat#getForm()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Form() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getReach <em>Reach</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reach</em>'.
	 * @see org.frisket.model.Mat#getReach()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_Reach() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getShadowX <em>Shadow X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shadow X</em>'.
	 * @see org.frisket.model.Mat#getShadowX()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_ShadowX() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getShadowY <em>Shadow Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shadow Y</em>'.
	 * @see org.frisket.model.Mat#getShadowY()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_ShadowY() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getFrameKind <em>Frame Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Kind</em>'.
	 * @see org.frisket.model.Mat#getFrameKind()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_FrameKind() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getFrameMargin <em>Frame Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Margin</em>'.
	 * @see org.frisket.model.Mat#getFrameMargin()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_FrameMargin() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getFrameWidth <em>Frame Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frame Width</em>'.
	 * @see org.frisket.model.Mat#getFrameWidth()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_FrameWidth() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getCornerRadius <em>Corner Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Corner Radius</em>'.
	 * @see org.frisket.model.Mat#getCornerRadius()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_CornerRadius() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Mat#getSmallestHole <em>Smallest Hole</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Smallest Hole</em>'.
	 * @see org.frisket.model.Mat#getSmallestHole()
	 * @see #getMat()
	 * @generated
	 */
	public EAttribute getMat_SmallestHole() {
		return (EAttribute)matEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.Combination <em>Combination</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Combination</em>'.
	 * @see org.frisket.model.Combination
	 * @generated
	 */
	public EClass getCombination() {
		return combinationEClass;
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Combination#getRule <em>Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule</em>'.
	 * @see org.frisket.model.Combination#getRule()
	 * @see #getCombination()
	 * @generated
	 */
	public EAttribute getCombination_Rule() {
		return (EAttribute)combinationEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the reference list '{@link org.frisket.model.Combination#getParts <em>Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Parts</em>'.
	 * @see org.frisket.model.Combination#getParts()
	 * @see #getCombination()
	 * @generated
	 */
	public EReference getCombination_Parts() {
		return (EReference)combinationEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.Combination#getCornerRadius <em>Corner Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Corner Radius</em>'.
	 * @see org.frisket.model.Combination#getCornerRadius()
	 * @see #getCombination()
	 * @generated
	 */
	public EAttribute getCombination_CornerRadius() {
		return (EAttribute)combinationEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for class '{@link org.frisket.model.WeedLines <em>Weed Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Weed Lines</em>'.
	 * @see org.frisket.model.WeedLines
	 * @generated
	 */
	public EClass getWeedLines() {
		return weedLinesEClass;
	}

	/**
	 * Returns the meta object for the reference list '{@link org.frisket.model.WeedLines#getAround <em>Around</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Around</em>'.
	 * @see org.frisket.model.WeedLines#getAround()
	 * @see #getWeedLines()
	 * @generated
	 */
	public EReference getWeedLines_Around() {
		return (EReference)weedLinesEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.WeedLines#getMargin <em>Margin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Margin</em>'.
	 * @see org.frisket.model.WeedLines#getMargin()
	 * @see #getWeedLines()
	 * @generated
	 */
	public EAttribute getWeedLines_Margin() {
		return (EAttribute)weedLinesEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.WeedLines#isBetween <em>Between</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Between</em>'.
	 * @see org.frisket.model.WeedLines#isBetween()
	 * @see #getWeedLines()
	 * @generated
	 */
	public EAttribute getWeedLines_Between() {
		return (EAttribute)weedLinesEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.WeedLines#getSpacing <em>Spacing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spacing</em>'.
	 * @see org.frisket.model.WeedLines#getSpacing()
	 * @see #getWeedLines()
	 * @generated
	 */
	public EAttribute getWeedLines_Spacing() {
		return (EAttribute)weedLinesEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * Returns the meta object for the attribute '{@link org.frisket.model.WeedLines#getClearance <em>Clearance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clearance</em>'.
	 * @see org.frisket.model.WeedLines#getClearance()
	 * @see #getWeedLines()
	 * @generated
	 */
	public EAttribute getWeedLines_Clearance() {
		return (EAttribute)weedLinesEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Stage</em>'.
	 * @see org.frisket.model.Stage
	 * @generated
	 */
	public EEnum getStage() {
		return stageEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.MarkKind <em>Mark Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mark Kind</em>'.
	 * @see org.frisket.model.MarkKind
	 * @generated
	 */
	public EEnum getMarkKind() {
		return markKindEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.SheetFit <em>Sheet Fit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sheet Fit</em>'.
	 * @see org.frisket.model.SheetFit
	 * @generated
	 */
	public EEnum getSheetFit() {
		return sheetFitEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.Turning <em>Turning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Turning</em>'.
	 * @see org.frisket.model.Turning
	 * @generated
	 */
	public EEnum getTurning() {
		return turningEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.OperationKind <em>Operation Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Operation Kind</em>'.
	 * @see org.frisket.model.OperationKind
	 * @generated
	 */
	public EEnum getOperationKind() {
		return operationKindEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.Alignment <em>Alignment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Alignment</em>'.
	 * @see org.frisket.model.Alignment
	 * @generated
	 */
	public EEnum getAlignment() {
		return alignmentEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.Flow <em>Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Flow</em>'.
	 * @see org.frisket.model.Flow
	 * @generated
	 */
	public EEnum getFlow() {
		return flowEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.PenStyle <em>Pen Style</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pen Style</em>'.
	 * @see org.frisket.model.PenStyle
	 * @generated
	 */
	public EEnum getPenStyle() {
		return penStyleEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.BarKind <em>Bar Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bar Kind</em>'.
	 * @see org.frisket.model.BarKind
	 * @generated
	 */
	public EEnum getBarKind() {
		return barKindEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.BackdropRule <em>Backdrop Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Backdrop Rule</em>'.
	 * @see org.frisket.model.BackdropRule
	 * @generated
	 */
	public EEnum getBackdropRule() {
		return backdropRuleEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.EdgeHoles <em>Edge Holes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Edge Holes</em>'.
	 * @see org.frisket.model.EdgeHoles
	 * @generated
	 */
	public EEnum getEdgeHoles() {
		return edgeHolesEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.BleedKind <em>Bleed Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bleed Kind</em>'.
	 * @see org.frisket.model.BleedKind
	 * @generated
	 */
	public EEnum getBleedKind() {
		return bleedKindEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.CornerJoin <em>Corner Join</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Corner Join</em>'.
	 * @see org.frisket.model.CornerJoin
	 * @generated
	 */
	public EEnum getCornerJoin() {
		return cornerJoinEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.HoleRule <em>Hole Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hole Rule</em>'.
	 * @see org.frisket.model.HoleRule
	 * @generated
	 */
	public EEnum getHoleRule() {
		return holeRuleEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.MatForm <em>Mat Form</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Mat Form</em>'.
	 * @see org.frisket.model.MatForm
	 * @generated
	 */
	public EEnum getMatForm() {
		return matFormEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.FrameKind <em>Frame Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Frame Kind</em>'.
	 * @see org.frisket.model.FrameKind
	 * @generated
	 */
	public EEnum getFrameKind() {
		return frameKindEEnum;
	}

	/**
	 * Returns the meta object for enum '{@link org.frisket.model.CombinationRule <em>Combination Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Combination Rule</em>'.
	 * @see org.frisket.model.CombinationRule
	 * @generated
	 */
	public EEnum getCombinationRule() {
		return combinationRuleEEnum;
	}

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A day in the ISO form 2031-05-17.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @generated
	 */
	public EDataType getDate() {
		return dateEDataType;
	}

	/**
	 * Returns the meta object for data type '{@link java.time.Instant <em>Moment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A moment of universal time in the ISO form 2031-05-17T09:30:00Z.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Moment</em>'.
	 * @see java.time.Instant
	 * @generated
	 */
	public EDataType getMoment() {
		return momentEDataType;
	}

	/**
	 * Returns the meta object for data type '{@link org.frisket.model.Matrix <em>Matrix</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An affine map written as six numbers.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Matrix</em>'.
	 * @see org.frisket.model.Matrix
	 * @generated
	 */
	public EDataType getMatrix() {
		return matrixEDataType;
	}

	/**
	 * Returns the meta object for data type '{@link org.frisket.model.ImageBytes <em>Image Bytes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * The bytes of a file in base 64.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Image Bytes</em>'.
	 * @see org.frisket.model.ImageBytes
	 * @generated
	 */
	public EDataType getImageBytes() {
		return imageBytesEDataType;
	}

	/**
	 * Returns the meta object for data type '<em>Number</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A finite number, written as briefly as its exact value allows.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Number</em>'.
	 * @generated
	 */
	public EDataType getNumber() {
		return numberEDataType;
	}

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	public FrisketFactory getFrisketFactory() {
		return (FrisketFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents() {
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		jobEClass = createEClass(JOB);
		createEAttribute(jobEClass, JOB__ID);
		createEAttribute(jobEClass, JOB__NUMBER);
		createEAttribute(jobEClass, JOB__TITLE);
		createEAttribute(jobEClass, JOB__CUSTOMER);
		createEAttribute(jobEClass, JOB__DUE);
		createEAttribute(jobEClass, JOB__QUANTITY);
		createEAttribute(jobEClass, JOB__STAGE);
		createEAttribute(jobEClass, JOB__NOTES);
		createEReference(jobEClass, JOB__LAYERS);
		createEReference(jobEClass, JOB__HISTORY);
		createEReference(jobEClass, JOB__GROUPS);
		createEReference(jobEClass, JOB__GUIDES);
		createEReference(jobEClass, JOB__SHEETS);
		createEReference(jobEClass, JOB__GUESTS);
		createEReference(jobEClass, JOB__LAYING);
		createEAttribute(jobEClass, JOB__REPEATS);

		stageChangeEClass = createEClass(STAGE_CHANGE);
		createEAttribute(stageChangeEClass, STAGE_CHANGE__AT);
		createEAttribute(stageChangeEClass, STAGE_CHANGE__WHO);
		createEAttribute(stageChangeEClass, STAGE_CHANGE__FROM);
		createEAttribute(stageChangeEClass, STAGE_CHANGE__TO);
		createEAttribute(stageChangeEClass, STAGE_CHANGE__REMARK);

		sheetEClass = createEClass(SHEET);
		createEAttribute(sheetEClass, SHEET__ID);
		createEAttribute(sheetEClass, SHEET__NAME);
		createEAttribute(sheetEClass, SHEET__STOCK);
		createEAttribute(sheetEClass, SHEET__COLOUR);
		createEAttribute(sheetEClass, SHEET__WIDTH);
		createEAttribute(sheetEClass, SHEET__HEIGHT);
		createEAttribute(sheetEClass, SHEET__MARGIN);
		createEAttribute(sheetEClass, SHEET__GAP);
		createEAttribute(sheetEClass, SHEET__ROLL);
		createEAttribute(sheetEClass, SHEET__LEFTOVER);
		createEReference(sheetEClass, SHEET__PLACEMENTS);
		createEAttribute(sheetEClass, SHEET__PRINT_MARGIN);
		createEAttribute(sheetEClass, SHEET__PRINTER);
		createEReference(sheetEClass, SHEET__MARKS);
		createEAttribute(sheetEClass, SHEET__FIT);
		createEReference(sheetEClass, SHEET__MEASURED);

		placementEClass = createEClass(PLACEMENT);
		createEAttribute(placementEClass, PLACEMENT__JOB);
		createEAttribute(placementEClass, PLACEMENT__PART);
		createEAttribute(placementEClass, PLACEMENT__COPY);
		createEAttribute(placementEClass, PLACEMENT__X);
		createEAttribute(placementEClass, PLACEMENT__Y);
		createEAttribute(placementEClass, PLACEMENT__TURN);
		createEAttribute(placementEClass, PLACEMENT__PINNED);

		registerMarkEClass = createEClass(REGISTER_MARK);
		createEAttribute(registerMarkEClass, REGISTER_MARK__KIND);
		createEAttribute(registerMarkEClass, REGISTER_MARK__X);
		createEAttribute(registerMarkEClass, REGISTER_MARK__Y);
		createEAttribute(registerMarkEClass, REGISTER_MARK__TURN);
		createEAttribute(registerMarkEClass, REGISTER_MARK__SIZE);
		createEAttribute(registerMarkEClass, REGISTER_MARK__WEIGHT);
		createEAttribute(registerMarkEClass, REGISTER_MARK__QUIET);

		measuredMarkEClass = createEClass(MEASURED_MARK);
		createEAttribute(measuredMarkEClass, MEASURED_MARK__MARK);
		createEAttribute(measuredMarkEClass, MEASURED_MARK__X);
		createEAttribute(measuredMarkEClass, MEASURED_MARK__Y);
		createEAttribute(measuredMarkEClass, MEASURED_MARK__BACK);

		guestEClass = createEClass(GUEST);
		createEAttribute(guestEClass, GUEST__JOB);
		createEAttribute(guestEClass, GUEST__NUMBER);
		createEAttribute(guestEClass, GUEST__TITLE);
		createEAttribute(guestEClass, GUEST__FILE);

		layingEClass = createEClass(LAYING);
		createEAttribute(layingEClass, LAYING__WIDTH);
		createEAttribute(layingEClass, LAYING__HEIGHT);
		createEAttribute(layingEClass, LAYING__ROLL);
		createEAttribute(layingEClass, LAYING__GAP);
		createEAttribute(layingEClass, LAYING__MARGIN);
		createEAttribute(layingEClass, LAYING__TURNING);
		createEAttribute(layingEClass, LAYING__APART);
		createEAttribute(layingEClass, LAYING__BY_JOB);
		createEAttribute(layingEClass, LAYING__SEED);

		layerEClass = createEClass(LAYER);
		createEAttribute(layerEClass, LAYER__ID);
		createEAttribute(layerEClass, LAYER__NAME);
		createEAttribute(layerEClass, LAYER__STOCK);
		createEAttribute(layerEClass, LAYER__COLOUR);
		createEAttribute(layerEClass, LAYER__VISIBLE);
		createEAttribute(layerEClass, LAYER__LOCKED);
		createEReference(layerEClass, LAYER__ELEMENTS);
		createEAttribute(layerEClass, LAYER__BACK);

		elementEClass = createEClass(ELEMENT);
		createEAttribute(elementEClass, ELEMENT__ID);
		createEAttribute(elementEClass, ELEMENT__NAME);
		createEAttribute(elementEClass, ELEMENT__TRANSFORM);
		createEReference(elementEClass, ELEMENT__OPERATIONS);
		createEAttribute(elementEClass, ELEMENT__VISIBLE);
		createEAttribute(elementEClass, ELEMENT__LOCKED);

		groupEClass = createEClass(GROUP);
		createEAttribute(groupEClass, GROUP__ID);
		createEAttribute(groupEClass, GROUP__NAME);
		createEReference(groupEClass, GROUP__ELEMENTS);
		createEReference(groupEClass, GROUP__GROUPS);

		guideEClass = createEClass(GUIDE);
		createEAttribute(guideEClass, GUIDE__ACROSS);
		createEAttribute(guideEClass, GUIDE__AT);

		operationEClass = createEClass(OPERATION);
		createEAttribute(operationEClass, OPERATION__KIND);
		createEAttribute(operationEClass, OPERATION__TOOL);
		createEAttribute(operationEClass, OPERATION__PASSES);
		createEAttribute(operationEClass, OPERATION__DASH);
		createEAttribute(operationEClass, OPERATION__GAP);

		wordingEClass = createEClass(WORDING);
		createEAttribute(wordingEClass, WORDING__TEXT);
		createEReference(wordingEClass, WORDING__FONT);
		createEAttribute(wordingEClass, WORDING__HEIGHT);
		createEAttribute(wordingEClass, WORDING__LINE_SPACING);
		createEAttribute(wordingEClass, WORDING__TRACKING);
		createEAttribute(wordingEClass, WORDING__ALIGNMENT);
		createEAttribute(wordingEClass, WORDING__KERNING);
		createEAttribute(wordingEClass, WORDING__LIGATURES);
		createEAttribute(wordingEClass, WORDING__JOINED);
		createEAttribute(wordingEClass, WORDING__TOUCH);
		createEAttribute(wordingEClass, WORDING__FEATURES);
		createEAttribute(wordingEClass, WORDING__AXES);
		createEAttribute(wordingEClass, WORDING__WORD_SPACING);
		createEAttribute(wordingEClass, WORDING__MEASURE);
		createEReference(wordingEClass, WORDING__SPANS);
		createEReference(wordingEClass, WORDING__NUDGES);
		createEAttribute(wordingEClass, WORDING__FLOW);
		createEAttribute(wordingEClass, WORDING__ARC_RADIUS);
		createEAttribute(wordingEClass, WORDING__ARC_ANGLE);
		createEAttribute(wordingEClass, WORDING__ARC_INSIDE);
		createEAttribute(wordingEClass, WORDING__ARC_INWARD);
		createEReference(wordingEClass, WORDING__PATH);
		createEAttribute(wordingEClass, WORDING__PATH_START);
		createEAttribute(wordingEClass, WORDING__PATH_REVERSED);
		createEAttribute(wordingEClass, WORDING__PATH_HANGING);
		createEAttribute(wordingEClass, WORDING__BOX_WIDTH);
		createEAttribute(wordingEClass, WORDING__BOX_HEIGHT);
		createEAttribute(wordingEClass, WORDING__EMBOLDEN);
		createEReference(wordingEClass, WORDING__BARS);
		createEAttribute(wordingEClass, WORDING__TIE_MARKS);
		createEAttribute(wordingEClass, WORDING__TIE_WIDTH);
		createEAttribute(wordingEClass, WORDING__STENCIL);
		createEAttribute(wordingEClass, WORDING__PEN_STYLE);
		createEAttribute(wordingEClass, WORDING__HATCH_SPACING);
		createEAttribute(wordingEClass, WORDING__HATCH_ANGLE);
		createEAttribute(wordingEClass, WORDING__HATCH_INSET);
		createEReference(wordingEClass, WORDING__BRIDGES);
		createEReference(wordingEClass, WORDING__ISLANDS);

		textSpanEClass = createEClass(TEXT_SPAN);
		createEAttribute(textSpanEClass, TEXT_SPAN__START);
		createEAttribute(textSpanEClass, TEXT_SPAN__END);
		createEReference(textSpanEClass, TEXT_SPAN__FONT);
		createEAttribute(textSpanEClass, TEXT_SPAN__HEIGHT);
		createEAttribute(textSpanEClass, TEXT_SPAN__FEATURES);

		nudgeEClass = createEClass(NUDGE);
		createEAttribute(nudgeEClass, NUDGE__INDEX);
		createEAttribute(nudgeEClass, NUDGE__DX);
		createEAttribute(nudgeEClass, NUDGE__DY);
		createEAttribute(nudgeEClass, NUDGE__TURN);
		createEAttribute(nudgeEClass, NUDGE__SCALE);

		barEClass = createEClass(BAR);
		createEAttribute(barEClass, BAR__KIND);
		createEAttribute(barEClass, BAR__OFFSET);
		createEAttribute(barEClass, BAR__THICKNESS);
		createEAttribute(barEClass, BAR__OVERHANG);

		bridgeEClass = createEClass(BRIDGE);
		createEAttribute(bridgeEClass, BRIDGE__ONE);
		createEAttribute(bridgeEClass, BRIDGE__OTHER);
		createEAttribute(bridgeEClass, BRIDGE__WIDTH);
		createEAttribute(bridgeEClass, BRIDGE__PLACED);
		createEAttribute(bridgeEClass, BRIDGE__ONE_X);
		createEAttribute(bridgeEClass, BRIDGE__ONE_Y);
		createEAttribute(bridgeEClass, BRIDGE__OTHER_X);
		createEAttribute(bridgeEClass, BRIDGE__OTHER_Y);

		islandBridgesEClass = createEClass(ISLAND_BRIDGES);
		createEAttribute(islandBridgesEClass, ISLAND_BRIDGES__INDEX);
		createEAttribute(islandBridgesEClass, ISLAND_BRIDGES__ISLAND);
		createEAttribute(islandBridgesEClass, ISLAND_BRIDGES__COUNT);
		createEReference(islandBridgesEClass, ISLAND_BRIDGES__AT);

		bridgeAngleEClass = createEClass(BRIDGE_ANGLE);
		createEAttribute(bridgeAngleEClass, BRIDGE_ANGLE__ANGLE);

		fontRefEClass = createEClass(FONT_REF);
		createEAttribute(fontRefEClass, FONT_REF__NAME);
		createEAttribute(fontRefEClass, FONT_REF__STYLE);
		createEAttribute(fontRefEClass, FONT_REF__DIGEST);
		createEAttribute(fontRefEClass, FONT_REF__FILE);

		outlineEClass = createEClass(OUTLINE);
		createEAttribute(outlineEClass, OUTLINE__PATH_DATA);
		createEAttribute(outlineEClass, OUTLINE__CORNER_RADIUS);

		pictureEClass = createEClass(PICTURE);
		createEAttribute(pictureEClass, PICTURE__IMAGE);
		createEAttribute(pictureEClass, PICTURE__MEDIA_TYPE);
		createEAttribute(pictureEClass, PICTURE__WIDTH);
		createEAttribute(pictureEClass, PICTURE__HEIGHT);
		createEAttribute(pictureEClass, PICTURE__LINK);
		createEReference(pictureEClass, PICTURE__EDGE);
		createEAttribute(pictureEClass, PICTURE__BLEED);
		createEAttribute(pictureEClass, PICTURE__BLEED_KIND);

		pictureEdgeEClass = createEClass(PICTURE_EDGE);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__BACKDROP);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__COLOUR);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__DIFFERENCE);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__SHADOW);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__SPECKS);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__HOLES);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__SMOOTHING);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__BORDER);
		createEAttribute(pictureEdgeEClass, PICTURE_EDGE__WHOLE);

		matEClass = createEClass(MAT);
		createEReference(matEClass, MAT__BEHIND);
		createEAttribute(matEClass, MAT__DISTANCE);
		createEAttribute(matEClass, MAT__CORNERS);
		createEAttribute(matEClass, MAT__MITRE_LIMIT);
		createEAttribute(matEClass, MAT__HOLES);
		createEAttribute(matEClass, MAT__SMOOTHING);
		createEAttribute(matEClass, MAT__FORM);
		createEAttribute(matEClass, MAT__REACH);
		createEAttribute(matEClass, MAT__SHADOW_X);
		createEAttribute(matEClass, MAT__SHADOW_Y);
		createEAttribute(matEClass, MAT__FRAME_KIND);
		createEAttribute(matEClass, MAT__FRAME_MARGIN);
		createEAttribute(matEClass, MAT__FRAME_WIDTH);
		createEAttribute(matEClass, MAT__CORNER_RADIUS);
		createEAttribute(matEClass, MAT__SMALLEST_HOLE);

		combinationEClass = createEClass(COMBINATION);
		createEAttribute(combinationEClass, COMBINATION__RULE);
		createEReference(combinationEClass, COMBINATION__PARTS);
		createEAttribute(combinationEClass, COMBINATION__CORNER_RADIUS);

		weedLinesEClass = createEClass(WEED_LINES);
		createEReference(weedLinesEClass, WEED_LINES__AROUND);
		createEAttribute(weedLinesEClass, WEED_LINES__MARGIN);
		createEAttribute(weedLinesEClass, WEED_LINES__BETWEEN);
		createEAttribute(weedLinesEClass, WEED_LINES__SPACING);
		createEAttribute(weedLinesEClass, WEED_LINES__CLEARANCE);

		// Create enums
		stageEEnum = createEEnum(STAGE);
		markKindEEnum = createEEnum(MARK_KIND);
		sheetFitEEnum = createEEnum(SHEET_FIT);
		turningEEnum = createEEnum(TURNING);
		operationKindEEnum = createEEnum(OPERATION_KIND);
		alignmentEEnum = createEEnum(ALIGNMENT);
		flowEEnum = createEEnum(FLOW);
		penStyleEEnum = createEEnum(PEN_STYLE);
		barKindEEnum = createEEnum(BAR_KIND);
		backdropRuleEEnum = createEEnum(BACKDROP_RULE);
		edgeHolesEEnum = createEEnum(EDGE_HOLES);
		bleedKindEEnum = createEEnum(BLEED_KIND);
		cornerJoinEEnum = createEEnum(CORNER_JOIN);
		holeRuleEEnum = createEEnum(HOLE_RULE);
		matFormEEnum = createEEnum(MAT_FORM);
		frameKindEEnum = createEEnum(FRAME_KIND);
		combinationRuleEEnum = createEEnum(COMBINATION_RULE);

		// Create data types
		dateEDataType = createEDataType(DATE);
		momentEDataType = createEDataType(MOMENT);
		matrixEDataType = createEDataType(MATRIX);
		imageBytesEDataType = createEDataType(IMAGE_BYTES);
		numberEDataType = createEDataType(NUMBER);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents() {
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		wordingEClass.getESuperTypes().add(this.getElement());
		outlineEClass.getESuperTypes().add(this.getElement());
		pictureEClass.getESuperTypes().add(this.getElement());
		matEClass.getESuperTypes().add(this.getElement());
		combinationEClass.getESuperTypes().add(this.getElement());
		weedLinesEClass.getESuperTypes().add(this.getElement());

		// Initialize classes and features; add operations and parameters
		initEClass(jobEClass, Job.class, "Job", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getJob_Id(), ecorePackage.getEString(), "id", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Number(), ecorePackage.getEString(), "number", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Title(), ecorePackage.getEString(), "title", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Customer(), ecorePackage.getEString(), "customer", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Due(), this.getDate(), "due", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Quantity(), ecorePackage.getEInt(), "quantity", "1", 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Stage(), this.getStage(), "stage", "enquiry", 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Notes(), ecorePackage.getEString(), "notes", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Layers(), this.getLayer(), null, "layers", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_History(), this.getStageChange(), null, "history", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Groups(), this.getGroup(), null, "groups", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Guides(), this.getGuide(), null, "guides", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Sheets(), this.getSheet(), null, "sheets", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Guests(), this.getGuest(), null, "guests", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getJob_Laying(), this.getLaying(), null, "laying", null, 0, 1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getJob_Repeats(), ecorePackage.getEString(), "repeats", null, 0, -1, Job.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stageChangeEClass, StageChange.class, "StageChange", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStageChange_At(), this.getMoment(), "at", null, 0, 1, StageChange.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStageChange_Who(), ecorePackage.getEString(), "who", null, 0, 1, StageChange.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStageChange_From(), this.getStage(), "from", "enquiry", 0, 1, StageChange.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStageChange_To(), this.getStage(), "to", "enquiry", 0, 1, StageChange.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStageChange_Remark(), ecorePackage.getEString(), "remark", null, 0, 1, StageChange.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sheetEClass, Sheet.class, "Sheet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSheet_Id(), ecorePackage.getEString(), "id", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Name(), ecorePackage.getEString(), "name", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Stock(), ecorePackage.getEString(), "stock", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Width(), this.getNumber(), "width", "0", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Height(), this.getNumber(), "height", "0", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Margin(), this.getNumber(), "margin", "0", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Gap(), this.getNumber(), "gap", "0", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Roll(), ecorePackage.getEBoolean(), "roll", "false", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Leftover(), ecorePackage.getEString(), "leftover", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Placements(), this.getPlacement(), null, "placements", null, 0, -1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_PrintMargin(), this.getNumber(), "printMargin", "5", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Printer(), ecorePackage.getEString(), "printer", null, 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Marks(), this.getRegisterMark(), null, "marks", null, 0, -1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSheet_Fit(), this.getSheetFit(), "fit", "similarity", 0, 1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSheet_Measured(), this.getMeasuredMark(), null, "measured", null, 0, -1, Sheet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(placementEClass, Placement.class, "Placement", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPlacement_Job(), ecorePackage.getEString(), "job", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Part(), ecorePackage.getEString(), "part", null, 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Copy(), ecorePackage.getEInt(), "copy", "1", 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_X(), this.getNumber(), "x", "0", 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Y(), this.getNumber(), "y", "0", 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Turn(), this.getNumber(), "turn", "0", 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPlacement_Pinned(), ecorePackage.getEBoolean(), "pinned", "false", 0, 1, Placement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(registerMarkEClass, RegisterMark.class, "RegisterMark", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRegisterMark_Kind(), this.getMarkKind(), "kind", "disc", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_X(), this.getNumber(), "x", "0", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_Y(), this.getNumber(), "y", "0", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_Turn(), this.getNumber(), "turn", "0", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_Size(), this.getNumber(), "size", "5", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_Weight(), this.getNumber(), "weight", "1", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRegisterMark_Quiet(), this.getNumber(), "quiet", "3", 0, 1, RegisterMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(measuredMarkEClass, MeasuredMark.class, "MeasuredMark", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMeasuredMark_Mark(), ecorePackage.getEInt(), "mark", "0", 0, 1, MeasuredMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredMark_X(), this.getNumber(), "x", "0", 0, 1, MeasuredMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredMark_Y(), this.getNumber(), "y", "0", 0, 1, MeasuredMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMeasuredMark_Back(), ecorePackage.getEBoolean(), "back", "false", 0, 1, MeasuredMark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(guestEClass, Guest.class, "Guest", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGuest_Job(), ecorePackage.getEString(), "job", null, 0, 1, Guest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGuest_Number(), ecorePackage.getEString(), "number", null, 0, 1, Guest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGuest_Title(), ecorePackage.getEString(), "title", null, 0, 1, Guest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGuest_File(), ecorePackage.getEString(), "file", null, 0, 1, Guest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(layingEClass, Laying.class, "Laying", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLaying_Width(), this.getNumber(), "width", "0", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Height(), this.getNumber(), "height", "0", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Roll(), ecorePackage.getEBoolean(), "roll", "false", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Gap(), this.getNumber(), "gap", "2", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Margin(), this.getNumber(), "margin", "5", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Turning(), this.getTurning(), "turning", "half", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Apart(), ecorePackage.getEBoolean(), "apart", "false", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_ByJob(), ecorePackage.getEBoolean(), "byJob", "false", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLaying_Seed(), ecorePackage.getEInt(), "seed", "1", 0, 1, Laying.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(layerEClass, Layer.class, "Layer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLayer_Id(), ecorePackage.getEString(), "id", null, 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Name(), ecorePackage.getEString(), "name", null, 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Stock(), ecorePackage.getEString(), "stock", null, 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Visible(), ecorePackage.getEBoolean(), "visible", "true", 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Locked(), ecorePackage.getEBoolean(), "locked", "false", 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getLayer_Elements(), this.getElement(), null, "elements", null, 0, -1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLayer_Back(), ecorePackage.getEBoolean(), "back", "false", 0, 1, Layer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(elementEClass, Element.class, "Element", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getElement_Id(), ecorePackage.getEString(), "id", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Name(), ecorePackage.getEString(), "name", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Transform(), this.getMatrix(), "transform", "1 0 0 1 0 0", 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getElement_Operations(), this.getOperation(), null, "operations", null, 0, -1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Visible(), ecorePackage.getEBoolean(), "visible", "true", 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Locked(), ecorePackage.getEBoolean(), "locked", "false", 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(groupEClass, Group.class, "Group", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGroup_Id(), ecorePackage.getEString(), "id", null, 0, 1, Group.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGroup_Name(), ecorePackage.getEString(), "name", null, 0, 1, Group.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGroup_Elements(), this.getElement(), null, "elements", null, 0, -1, Group.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGroup_Groups(), this.getGroup(), null, "groups", null, 0, -1, Group.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(guideEClass, Guide.class, "Guide", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGuide_Across(), ecorePackage.getEBoolean(), "across", "false", 0, 1, Guide.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGuide_At(), this.getNumber(), "at", null, 0, 1, Guide.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(operationEClass, Operation.class, "Operation", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOperation_Kind(), this.getOperationKind(), "kind", "cut", 0, 1, Operation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOperation_Tool(), ecorePackage.getEString(), "tool", null, 0, 1, Operation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOperation_Passes(), ecorePackage.getEInt(), "passes", "1", 0, 1, Operation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOperation_Dash(), this.getNumber(), "dash", "0", 0, 1, Operation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOperation_Gap(), this.getNumber(), "gap", "0", 0, 1, Operation.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(wordingEClass, Wording.class, "Wording", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWording_Text(), ecorePackage.getEString(), "text", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Font(), this.getFontRef(), null, "font", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Height(), this.getNumber(), "height", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_LineSpacing(), this.getNumber(), "lineSpacing", "1.6", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Tracking(), this.getNumber(), "tracking", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Alignment(), this.getAlignment(), "alignment", "left", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Kerning(), ecorePackage.getEBoolean(), "kerning", "true", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Ligatures(), ecorePackage.getEBoolean(), "ligatures", "true", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Joined(), ecorePackage.getEBoolean(), "joined", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Touch(), this.getNumber(), "touch", "0.3", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Features(), ecorePackage.getEString(), "features", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Axes(), ecorePackage.getEString(), "axes", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_WordSpacing(), this.getNumber(), "wordSpacing", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Measure(), this.getNumber(), "measure", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Spans(), this.getTextSpan(), null, "spans", null, 0, -1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Nudges(), this.getNudge(), null, "nudges", null, 0, -1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Flow(), this.getFlow(), "flow", "straight", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_ArcRadius(), this.getNumber(), "arcRadius", "50", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_ArcAngle(), this.getNumber(), "arcAngle", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_ArcInside(), ecorePackage.getEBoolean(), "arcInside", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_ArcInward(), ecorePackage.getEBoolean(), "arcInward", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Path(), this.getOutline(), null, "path", null, 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_PathStart(), this.getNumber(), "pathStart", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_PathReversed(), ecorePackage.getEBoolean(), "pathReversed", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_PathHanging(), ecorePackage.getEBoolean(), "pathHanging", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_BoxWidth(), this.getNumber(), "boxWidth", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_BoxHeight(), this.getNumber(), "boxHeight", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Embolden(), this.getNumber(), "embolden", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Bars(), this.getBar(), null, "bars", null, 0, -1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_TieMarks(), ecorePackage.getEBoolean(), "tieMarks", "false", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_TieWidth(), this.getNumber(), "tieWidth", "1", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_Stencil(), this.getNumber(), "stencil", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_PenStyle(), this.getPenStyle(), "penStyle", "outline", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_HatchSpacing(), this.getNumber(), "hatchSpacing", "1", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_HatchAngle(), this.getNumber(), "hatchAngle", "45", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWording_HatchInset(), this.getNumber(), "hatchInset", "0", 0, 1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Bridges(), this.getBridge(), null, "bridges", null, 0, -1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWording_Islands(), this.getIslandBridges(), null, "islands", null, 0, -1, Wording.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(textSpanEClass, TextSpan.class, "TextSpan", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTextSpan_Start(), ecorePackage.getEInt(), "start", null, 0, 1, TextSpan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTextSpan_End(), ecorePackage.getEInt(), "end", null, 0, 1, TextSpan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTextSpan_Font(), this.getFontRef(), null, "font", null, 0, 1, TextSpan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTextSpan_Height(), this.getNumber(), "height", "0", 0, 1, TextSpan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTextSpan_Features(), ecorePackage.getEString(), "features", null, 0, 1, TextSpan.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(nudgeEClass, Nudge.class, "Nudge", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNudge_Index(), ecorePackage.getEInt(), "index", null, 0, 1, Nudge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNudge_Dx(), this.getNumber(), "dx", "0", 0, 1, Nudge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNudge_Dy(), this.getNumber(), "dy", "0", 0, 1, Nudge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNudge_Turn(), this.getNumber(), "turn", "0", 0, 1, Nudge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getNudge_Scale(), this.getNumber(), "scale", "1", 0, 1, Nudge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(barEClass, Bar.class, "Bar", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBar_Kind(), this.getBarKind(), "kind", "underline", 0, 1, Bar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBar_Offset(), this.getNumber(), "offset", "0", 0, 1, Bar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBar_Thickness(), this.getNumber(), "thickness", "1", 0, 1, Bar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBar_Overhang(), this.getNumber(), "overhang", "0", 0, 1, Bar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(bridgeEClass, Bridge.class, "Bridge", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBridge_One(), ecorePackage.getEInt(), "one", null, 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_Other(), ecorePackage.getEInt(), "other", null, 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_Width(), this.getNumber(), "width", "1", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_Placed(), ecorePackage.getEBoolean(), "placed", "false", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_OneX(), this.getNumber(), "oneX", "0", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_OneY(), this.getNumber(), "oneY", "0", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_OtherX(), this.getNumber(), "otherX", "0", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getBridge_OtherY(), this.getNumber(), "otherY", "0", 0, 1, Bridge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(islandBridgesEClass, IslandBridges.class, "IslandBridges", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIslandBridges_Index(), ecorePackage.getEInt(), "index", null, 0, 1, IslandBridges.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIslandBridges_Island(), ecorePackage.getEInt(), "island", "-1", 0, 1, IslandBridges.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIslandBridges_Count(), ecorePackage.getEInt(), "count", "2", 0, 1, IslandBridges.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getIslandBridges_At(), this.getBridgeAngle(), null, "at", null, 0, -1, IslandBridges.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(bridgeAngleEClass, BridgeAngle.class, "BridgeAngle", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getBridgeAngle_Angle(), this.getNumber(), "angle", null, 0, 1, BridgeAngle.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fontRefEClass, FontRef.class, "FontRef", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFontRef_Name(), ecorePackage.getEString(), "name", null, 0, 1, FontRef.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFontRef_Style(), ecorePackage.getEString(), "style", null, 0, 1, FontRef.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFontRef_Digest(), ecorePackage.getEString(), "digest", null, 0, 1, FontRef.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFontRef_File(), ecorePackage.getEString(), "file", null, 0, 1, FontRef.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(outlineEClass, Outline.class, "Outline", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOutline_PathData(), ecorePackage.getEString(), "pathData", null, 0, 1, Outline.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOutline_CornerRadius(), this.getNumber(), "cornerRadius", "0", 0, 1, Outline.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pictureEClass, Picture.class, "Picture", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPicture_Image(), this.getImageBytes(), "image", null, 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_MediaType(), ecorePackage.getEString(), "mediaType", null, 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_Width(), this.getNumber(), "width", "0", 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_Height(), this.getNumber(), "height", "0", 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_Link(), ecorePackage.getEString(), "link", null, 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPicture_Edge(), this.getPictureEdge(), null, "edge", null, 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_Bleed(), this.getNumber(), "bleed", "0", 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPicture_BleedKind(), this.getBleedKind(), "bleedKind", "extend", 0, 1, Picture.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pictureEdgeEClass, PictureEdge.class, "PictureEdge", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPictureEdge_Backdrop(), this.getBackdropRule(), "backdrop", "auto", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Colour(), ecorePackage.getEString(), "colour", null, 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Difference(), this.getNumber(), "difference", "10", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Shadow(), this.getNumber(), "shadow", "0", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Specks(), this.getNumber(), "specks", "0.5", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Holes(), this.getEdgeHoles(), "holes", "asTold", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Smoothing(), this.getNumber(), "smoothing", "0", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Border(), this.getNumber(), "border", "0", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPictureEdge_Whole(), ecorePackage.getEBoolean(), "whole", "false", 0, 1, PictureEdge.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(matEClass, Mat.class, "Mat", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getMat_Behind(), this.getElement(), null, "behind", null, 0, -1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Distance(), this.getNumber(), "distance", "0", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Corners(), this.getCornerJoin(), "corners", "round", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_MitreLimit(), this.getNumber(), "mitreLimit", "4", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Holes(), this.getHoleRule(), "holes", "keep", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Smoothing(), this.getNumber(), "smoothing", "0", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Form(), this.getMatForm(), "form", "follow", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_Reach(), this.getNumber(), "reach", "10", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_ShadowX(), this.getNumber(), "shadowX", "3", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_ShadowY(), this.getNumber(), "shadowY", "3", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_FrameKind(), this.getFrameKind(), "frameKind", "rectangle", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_FrameMargin(), this.getNumber(), "frameMargin", "5", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_FrameWidth(), this.getNumber(), "frameWidth", "5", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_CornerRadius(), this.getNumber(), "cornerRadius", "0", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMat_SmallestHole(), this.getNumber(), "smallestHole", "3", 0, 1, Mat.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(combinationEClass, Combination.class, "Combination", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCombination_Rule(), this.getCombinationRule(), "rule", "unite", 0, 1, Combination.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCombination_Parts(), this.getElement(), null, "parts", null, 0, -1, Combination.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCombination_CornerRadius(), this.getNumber(), "cornerRadius", "0", 0, 1, Combination.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(weedLinesEClass, WeedLines.class, "WeedLines", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getWeedLines_Around(), this.getElement(), null, "around", null, 0, -1, WeedLines.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeedLines_Margin(), this.getNumber(), "margin", "5", 0, 1, WeedLines.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeedLines_Between(), ecorePackage.getEBoolean(), "between", "true", 0, 1, WeedLines.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeedLines_Spacing(), this.getNumber(), "spacing", "0", 0, 1, WeedLines.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWeedLines_Clearance(), this.getNumber(), "clearance", "0.5", 0, 1, WeedLines.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(stageEEnum, Stage.class, "Stage");
		addEEnumLiteral(stageEEnum, Stage.ENQUIRY);
		addEEnumLiteral(stageEEnum, Stage.ORDERED);
		addEEnumLiteral(stageEEnum, Stage.DESIGNED);
		addEEnumLiteral(stageEEnum, Stage.APPROVED);
		addEEnumLiteral(stageEEnum, Stage.PRINTED);
		addEEnumLiteral(stageEEnum, Stage.CUT);
		addEEnumLiteral(stageEEnum, Stage.FINISHED);
		addEEnumLiteral(stageEEnum, Stage.DELIVERED);
		addEEnumLiteral(stageEEnum, Stage.ON_HOLD);
		addEEnumLiteral(stageEEnum, Stage.CANCELLED);

		initEEnum(markKindEEnum, MarkKind.class, "MarkKind");
		addEEnumLiteral(markKindEEnum, MarkKind.CORNER);
		addEEnumLiteral(markKindEEnum, MarkKind.CROSS);
		addEEnumLiteral(markKindEEnum, MarkKind.DISC);
		addEEnumLiteral(markKindEEnum, MarkKind.PENNANT);

		initEEnum(sheetFitEEnum, SheetFit.class, "SheetFit");
		addEEnumLiteral(sheetFitEEnum, SheetFit.RIGID);
		addEEnumLiteral(sheetFitEEnum, SheetFit.SIMILARITY);
		addEEnumLiteral(sheetFitEEnum, SheetFit.AFFINE);
		addEEnumLiteral(sheetFitEEnum, SheetFit.PROJECTIVE);

		initEEnum(turningEEnum, Turning.class, "Turning");
		addEEnumLiteral(turningEEnum, Turning.NONE);
		addEEnumLiteral(turningEEnum, Turning.HALF);
		addEEnumLiteral(turningEEnum, Turning.QUARTER);
		addEEnumLiteral(turningEEnum, Turning.FREE);

		initEEnum(operationKindEEnum, OperationKind.class, "OperationKind");
		addEEnumLiteral(operationKindEEnum, OperationKind.CUT);
		addEEnumLiteral(operationKindEEnum, OperationKind.KISS_CUT);
		addEEnumLiteral(operationKindEEnum, OperationKind.CREASE);
		addEEnumLiteral(operationKindEEnum, OperationKind.PERFORATE);
		addEEnumLiteral(operationKindEEnum, OperationKind.DRAW);
		addEEnumLiteral(operationKindEEnum, OperationKind.PRINT);

		initEEnum(alignmentEEnum, Alignment.class, "Alignment");
		addEEnumLiteral(alignmentEEnum, Alignment.LEFT);
		addEEnumLiteral(alignmentEEnum, Alignment.CENTRE);
		addEEnumLiteral(alignmentEEnum, Alignment.RIGHT);
		addEEnumLiteral(alignmentEEnum, Alignment.JUSTIFY);

		initEEnum(flowEEnum, Flow.class, "Flow");
		addEEnumLiteral(flowEEnum, Flow.STRAIGHT);
		addEEnumLiteral(flowEEnum, Flow.STACKED);
		addEEnumLiteral(flowEEnum, Flow.ARC);
		addEEnumLiteral(flowEEnum, Flow.PATH);

		initEEnum(penStyleEEnum, PenStyle.class, "PenStyle");
		addEEnumLiteral(penStyleEEnum, PenStyle.OUTLINE);
		addEEnumLiteral(penStyleEEnum, PenStyle.CENTRELINE);
		addEEnumLiteral(penStyleEEnum, PenStyle.HATCHED);

		initEEnum(barKindEEnum, BarKind.class, "BarKind");
		addEEnumLiteral(barKindEEnum, BarKind.UNDERLINE);
		addEEnumLiteral(barKindEEnum, BarKind.BASELINE);
		addEEnumLiteral(barKindEEnum, BarKind.FRAME);

		initEEnum(backdropRuleEEnum, BackdropRule.class, "BackdropRule");
		addEEnumLiteral(backdropRuleEEnum, BackdropRule.AUTO);
		addEEnumLiteral(backdropRuleEEnum, BackdropRule.TRANSPARENT);
		addEEnumLiteral(backdropRuleEEnum, BackdropRule.COLOUR);

		initEEnum(edgeHolesEEnum, EdgeHoles.class, "EdgeHoles");
		addEEnumLiteral(edgeHolesEEnum, EdgeHoles.AS_TOLD);
		addEEnumLiteral(edgeHolesEEnum, EdgeHoles.KEEP);
		addEEnumLiteral(edgeHolesEEnum, EdgeHoles.FILL);

		initEEnum(bleedKindEEnum, BleedKind.class, "BleedKind");
		addEEnumLiteral(bleedKindEEnum, BleedKind.EXTEND);
		addEEnumLiteral(bleedKindEEnum, BleedKind.ENLARGE);

		initEEnum(cornerJoinEEnum, CornerJoin.class, "CornerJoin");
		addEEnumLiteral(cornerJoinEEnum, CornerJoin.ROUND);
		addEEnumLiteral(cornerJoinEEnum, CornerJoin.MITRE);
		addEEnumLiteral(cornerJoinEEnum, CornerJoin.BEVEL);

		initEEnum(holeRuleEEnum, HoleRule.class, "HoleRule");
		addEEnumLiteral(holeRuleEEnum, HoleRule.KEEP);
		addEEnumLiteral(holeRuleEEnum, HoleRule.FILL);
		addEEnumLiteral(holeRuleEEnum, HoleRule.FILL_SMALL);

		initEEnum(matFormEEnum, MatForm.class, "MatForm");
		addEEnumLiteral(matFormEEnum, MatForm.FOLLOW);
		addEEnumLiteral(matFormEEnum, MatForm.CONVEX_HULL);
		addEEnumLiteral(matFormEEnum, MatForm.HOLLOW_HULL);
		addEEnumLiteral(matFormEEnum, MatForm.FRAME);
		addEEnumLiteral(matFormEEnum, MatForm.SHADOW);

		initEEnum(frameKindEEnum, FrameKind.class, "FrameKind");
		addEEnumLiteral(frameKindEEnum, FrameKind.RECTANGLE);
		addEEnumLiteral(frameKindEEnum, FrameKind.ELLIPSE);

		initEEnum(combinationRuleEEnum, CombinationRule.class, "CombinationRule");
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.UNITE);
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.SUBTRACT);
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.INTERSECT);
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.EXCLUDE);
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.LEFT);
		addEEnumLiteral(combinationRuleEEnum, CombinationRule.RIGHT);

		// Initialize data types
		initEDataType(dateEDataType, LocalDate.class, "Date", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(momentEDataType, Instant.class, "Moment", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(matrixEDataType, Matrix.class, "Matrix", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(imageBytesEDataType, ImageBytes.class, "ImageBytes", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(numberEDataType, double.class, "Number", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);
	}

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public interface Literals {
		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.JobImpl <em>Job</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.JobImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getJob()
		 * @generated
		 */
		public static final EClass JOB = eINSTANCE.getJob();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__ID = eINSTANCE.getJob_Id();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__NUMBER = eINSTANCE.getJob_Number();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__TITLE = eINSTANCE.getJob_Title();

		/**
		 * The meta object literal for the '<em><b>Customer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__CUSTOMER = eINSTANCE.getJob_Customer();

		/**
		 * The meta object literal for the '<em><b>Due</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__DUE = eINSTANCE.getJob_Due();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__QUANTITY = eINSTANCE.getJob_Quantity();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__STAGE = eINSTANCE.getJob_Stage();

		/**
		 * The meta object literal for the '<em><b>Notes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__NOTES = eINSTANCE.getJob_Notes();

		/**
		 * The meta object literal for the '<em><b>Layers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__LAYERS = eINSTANCE.getJob_Layers();

		/**
		 * The meta object literal for the '<em><b>History</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__HISTORY = eINSTANCE.getJob_History();

		/**
		 * The meta object literal for the '<em><b>Groups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__GROUPS = eINSTANCE.getJob_Groups();

		/**
		 * The meta object literal for the '<em><b>Guides</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__GUIDES = eINSTANCE.getJob_Guides();

		/**
		 * The meta object literal for the '<em><b>Sheets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__SHEETS = eINSTANCE.getJob_Sheets();

		/**
		 * The meta object literal for the '<em><b>Guests</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__GUESTS = eINSTANCE.getJob_Guests();

		/**
		 * The meta object literal for the '<em><b>Laying</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference JOB__LAYING = eINSTANCE.getJob_Laying();

		/**
		 * The meta object literal for the '<em><b>Repeats</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute JOB__REPEATS = eINSTANCE.getJob_Repeats();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.StageChangeImpl <em>Stage Change</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.StageChangeImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getStageChange()
		 * @generated
		 */
		public static final EClass STAGE_CHANGE = eINSTANCE.getStageChange();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute STAGE_CHANGE__AT = eINSTANCE.getStageChange_At();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute STAGE_CHANGE__WHO = eINSTANCE.getStageChange_Who();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute STAGE_CHANGE__FROM = eINSTANCE.getStageChange_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute STAGE_CHANGE__TO = eINSTANCE.getStageChange_To();

		/**
		 * The meta object literal for the '<em><b>Remark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute STAGE_CHANGE__REMARK = eINSTANCE.getStageChange_Remark();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.SheetImpl <em>Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.SheetImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getSheet()
		 * @generated
		 */
		public static final EClass SHEET = eINSTANCE.getSheet();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__ID = eINSTANCE.getSheet_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__NAME = eINSTANCE.getSheet_Name();

		/**
		 * The meta object literal for the '<em><b>Stock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__STOCK = eINSTANCE.getSheet_Stock();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__COLOUR = eINSTANCE.getSheet_Colour();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__WIDTH = eINSTANCE.getSheet_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__HEIGHT = eINSTANCE.getSheet_Height();

		/**
		 * The meta object literal for the '<em><b>Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__MARGIN = eINSTANCE.getSheet_Margin();

		/**
		 * The meta object literal for the '<em><b>Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__GAP = eINSTANCE.getSheet_Gap();

		/**
		 * The meta object literal for the '<em><b>Roll</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__ROLL = eINSTANCE.getSheet_Roll();

		/**
		 * The meta object literal for the '<em><b>Leftover</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__LEFTOVER = eINSTANCE.getSheet_Leftover();

		/**
		 * The meta object literal for the '<em><b>Placements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference SHEET__PLACEMENTS = eINSTANCE.getSheet_Placements();

		/**
		 * The meta object literal for the '<em><b>Print Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__PRINT_MARGIN = eINSTANCE.getSheet_PrintMargin();

		/**
		 * The meta object literal for the '<em><b>Printer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__PRINTER = eINSTANCE.getSheet_Printer();

		/**
		 * The meta object literal for the '<em><b>Marks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference SHEET__MARKS = eINSTANCE.getSheet_Marks();

		/**
		 * The meta object literal for the '<em><b>Fit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute SHEET__FIT = eINSTANCE.getSheet_Fit();

		/**
		 * The meta object literal for the '<em><b>Measured</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference SHEET__MEASURED = eINSTANCE.getSheet_Measured();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.PlacementImpl <em>Placement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.PlacementImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getPlacement()
		 * @generated
		 */
		public static final EClass PLACEMENT = eINSTANCE.getPlacement();

		/**
		 * The meta object literal for the '<em><b>Job</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__JOB = eINSTANCE.getPlacement_Job();

		/**
		 * The meta object literal for the '<em><b>Part</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__PART = eINSTANCE.getPlacement_Part();

		/**
		 * The meta object literal for the '<em><b>Copy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__COPY = eINSTANCE.getPlacement_Copy();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__X = eINSTANCE.getPlacement_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__Y = eINSTANCE.getPlacement_Y();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__TURN = eINSTANCE.getPlacement_Turn();

		/**
		 * The meta object literal for the '<em><b>Pinned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PLACEMENT__PINNED = eINSTANCE.getPlacement_Pinned();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.RegisterMarkImpl <em>Register Mark</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.RegisterMarkImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getRegisterMark()
		 * @generated
		 */
		public static final EClass REGISTER_MARK = eINSTANCE.getRegisterMark();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__KIND = eINSTANCE.getRegisterMark_Kind();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__X = eINSTANCE.getRegisterMark_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__Y = eINSTANCE.getRegisterMark_Y();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__TURN = eINSTANCE.getRegisterMark_Turn();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__SIZE = eINSTANCE.getRegisterMark_Size();

		/**
		 * The meta object literal for the '<em><b>Weight</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__WEIGHT = eINSTANCE.getRegisterMark_Weight();

		/**
		 * The meta object literal for the '<em><b>Quiet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute REGISTER_MARK__QUIET = eINSTANCE.getRegisterMark_Quiet();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.MeasuredMarkImpl <em>Measured Mark</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.MeasuredMarkImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMeasuredMark()
		 * @generated
		 */
		public static final EClass MEASURED_MARK = eINSTANCE.getMeasuredMark();

		/**
		 * The meta object literal for the '<em><b>Mark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MEASURED_MARK__MARK = eINSTANCE.getMeasuredMark_Mark();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MEASURED_MARK__X = eINSTANCE.getMeasuredMark_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MEASURED_MARK__Y = eINSTANCE.getMeasuredMark_Y();

		/**
		 * The meta object literal for the '<em><b>Back</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MEASURED_MARK__BACK = eINSTANCE.getMeasuredMark_Back();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.GuestImpl <em>Guest</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.GuestImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getGuest()
		 * @generated
		 */
		public static final EClass GUEST = eINSTANCE.getGuest();

		/**
		 * The meta object literal for the '<em><b>Job</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUEST__JOB = eINSTANCE.getGuest_Job();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUEST__NUMBER = eINSTANCE.getGuest_Number();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUEST__TITLE = eINSTANCE.getGuest_Title();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUEST__FILE = eINSTANCE.getGuest_File();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.LayingImpl <em>Laying</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.LayingImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getLaying()
		 * @generated
		 */
		public static final EClass LAYING = eINSTANCE.getLaying();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__WIDTH = eINSTANCE.getLaying_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__HEIGHT = eINSTANCE.getLaying_Height();

		/**
		 * The meta object literal for the '<em><b>Roll</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__ROLL = eINSTANCE.getLaying_Roll();

		/**
		 * The meta object literal for the '<em><b>Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__GAP = eINSTANCE.getLaying_Gap();

		/**
		 * The meta object literal for the '<em><b>Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__MARGIN = eINSTANCE.getLaying_Margin();

		/**
		 * The meta object literal for the '<em><b>Turning</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__TURNING = eINSTANCE.getLaying_Turning();

		/**
		 * The meta object literal for the '<em><b>Apart</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__APART = eINSTANCE.getLaying_Apart();

		/**
		 * The meta object literal for the '<em><b>By Job</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__BY_JOB = eINSTANCE.getLaying_ByJob();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYING__SEED = eINSTANCE.getLaying_Seed();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.LayerImpl <em>Layer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.LayerImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getLayer()
		 * @generated
		 */
		public static final EClass LAYER = eINSTANCE.getLayer();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__ID = eINSTANCE.getLayer_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__NAME = eINSTANCE.getLayer_Name();

		/**
		 * The meta object literal for the '<em><b>Stock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__STOCK = eINSTANCE.getLayer_Stock();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__COLOUR = eINSTANCE.getLayer_Colour();

		/**
		 * The meta object literal for the '<em><b>Visible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__VISIBLE = eINSTANCE.getLayer_Visible();

		/**
		 * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__LOCKED = eINSTANCE.getLayer_Locked();

		/**
		 * The meta object literal for the '<em><b>Elements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference LAYER__ELEMENTS = eINSTANCE.getLayer_Elements();

		/**
		 * The meta object literal for the '<em><b>Back</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute LAYER__BACK = eINSTANCE.getLayer_Back();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.ElementImpl <em>Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.ElementImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getElement()
		 * @generated
		 */
		public static final EClass ELEMENT = eINSTANCE.getElement();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ELEMENT__ID = eINSTANCE.getElement_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ELEMENT__NAME = eINSTANCE.getElement_Name();

		/**
		 * The meta object literal for the '<em><b>Transform</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ELEMENT__TRANSFORM = eINSTANCE.getElement_Transform();

		/**
		 * The meta object literal for the '<em><b>Operations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference ELEMENT__OPERATIONS = eINSTANCE.getElement_Operations();

		/**
		 * The meta object literal for the '<em><b>Visible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ELEMENT__VISIBLE = eINSTANCE.getElement_Visible();

		/**
		 * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ELEMENT__LOCKED = eINSTANCE.getElement_Locked();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.GroupImpl <em>Group</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.GroupImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getGroup()
		 * @generated
		 */
		public static final EClass GROUP = eINSTANCE.getGroup();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GROUP__ID = eINSTANCE.getGroup_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GROUP__NAME = eINSTANCE.getGroup_Name();

		/**
		 * The meta object literal for the '<em><b>Elements</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference GROUP__ELEMENTS = eINSTANCE.getGroup_Elements();

		/**
		 * The meta object literal for the '<em><b>Groups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference GROUP__GROUPS = eINSTANCE.getGroup_Groups();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.GuideImpl <em>Guide</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.GuideImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getGuide()
		 * @generated
		 */
		public static final EClass GUIDE = eINSTANCE.getGuide();

		/**
		 * The meta object literal for the '<em><b>Across</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUIDE__ACROSS = eINSTANCE.getGuide_Across();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute GUIDE__AT = eINSTANCE.getGuide_At();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.OperationImpl <em>Operation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.OperationImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getOperation()
		 * @generated
		 */
		public static final EClass OPERATION = eINSTANCE.getOperation();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OPERATION__KIND = eINSTANCE.getOperation_Kind();

		/**
		 * The meta object literal for the '<em><b>Tool</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OPERATION__TOOL = eINSTANCE.getOperation_Tool();

		/**
		 * The meta object literal for the '<em><b>Passes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OPERATION__PASSES = eINSTANCE.getOperation_Passes();

		/**
		 * The meta object literal for the '<em><b>Dash</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OPERATION__DASH = eINSTANCE.getOperation_Dash();

		/**
		 * The meta object literal for the '<em><b>Gap</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OPERATION__GAP = eINSTANCE.getOperation_Gap();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.WordingImpl <em>Wording</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.WordingImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getWording()
		 * @generated
		 */
		public static final EClass WORDING = eINSTANCE.getWording();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__TEXT = eINSTANCE.getWording_Text();

		/**
		 * The meta object literal for the '<em><b>Font</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__FONT = eINSTANCE.getWording_Font();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__HEIGHT = eINSTANCE.getWording_Height();

		/**
		 * The meta object literal for the '<em><b>Line Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__LINE_SPACING = eINSTANCE.getWording_LineSpacing();

		/**
		 * The meta object literal for the '<em><b>Tracking</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__TRACKING = eINSTANCE.getWording_Tracking();

		/**
		 * The meta object literal for the '<em><b>Alignment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__ALIGNMENT = eINSTANCE.getWording_Alignment();

		/**
		 * The meta object literal for the '<em><b>Kerning</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__KERNING = eINSTANCE.getWording_Kerning();

		/**
		 * The meta object literal for the '<em><b>Ligatures</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__LIGATURES = eINSTANCE.getWording_Ligatures();

		/**
		 * The meta object literal for the '<em><b>Joined</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__JOINED = eINSTANCE.getWording_Joined();

		/**
		 * The meta object literal for the '<em><b>Touch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__TOUCH = eINSTANCE.getWording_Touch();

		/**
		 * The meta object literal for the '<em><b>Features</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__FEATURES = eINSTANCE.getWording_Features();

		/**
		 * The meta object literal for the '<em><b>Axes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__AXES = eINSTANCE.getWording_Axes();

		/**
		 * The meta object literal for the '<em><b>Word Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__WORD_SPACING = eINSTANCE.getWording_WordSpacing();

		/**
		 * The meta object literal for the '<em><b>Measure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__MEASURE = eINSTANCE.getWording_Measure();

		/**
		 * The meta object literal for the '<em><b>Spans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__SPANS = eINSTANCE.getWording_Spans();

		/**
		 * The meta object literal for the '<em><b>Nudges</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__NUDGES = eINSTANCE.getWording_Nudges();

		/**
		 * The meta object literal for the '<em><b>Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__FLOW = eINSTANCE.getWording_Flow();

		/**
		 * The meta object literal for the '<em><b>Arc Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__ARC_RADIUS = eINSTANCE.getWording_ArcRadius();

		/**
		 * The meta object literal for the '<em><b>Arc Angle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__ARC_ANGLE = eINSTANCE.getWording_ArcAngle();

		/**
		 * The meta object literal for the '<em><b>Arc Inside</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__ARC_INSIDE = eINSTANCE.getWording_ArcInside();

		/**
		 * The meta object literal for the '<em><b>Arc Inward</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__ARC_INWARD = eINSTANCE.getWording_ArcInward();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__PATH = eINSTANCE.getWording_Path();

		/**
		 * The meta object literal for the '<em><b>Path Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__PATH_START = eINSTANCE.getWording_PathStart();

		/**
		 * The meta object literal for the '<em><b>Path Reversed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__PATH_REVERSED = eINSTANCE.getWording_PathReversed();

		/**
		 * The meta object literal for the '<em><b>Path Hanging</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__PATH_HANGING = eINSTANCE.getWording_PathHanging();

		/**
		 * The meta object literal for the '<em><b>Box Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__BOX_WIDTH = eINSTANCE.getWording_BoxWidth();

		/**
		 * The meta object literal for the '<em><b>Box Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__BOX_HEIGHT = eINSTANCE.getWording_BoxHeight();

		/**
		 * The meta object literal for the '<em><b>Embolden</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__EMBOLDEN = eINSTANCE.getWording_Embolden();

		/**
		 * The meta object literal for the '<em><b>Bars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__BARS = eINSTANCE.getWording_Bars();

		/**
		 * The meta object literal for the '<em><b>Tie Marks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__TIE_MARKS = eINSTANCE.getWording_TieMarks();

		/**
		 * The meta object literal for the '<em><b>Tie Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__TIE_WIDTH = eINSTANCE.getWording_TieWidth();

		/**
		 * The meta object literal for the '<em><b>Stencil</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__STENCIL = eINSTANCE.getWording_Stencil();

		/**
		 * The meta object literal for the '<em><b>Pen Style</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__PEN_STYLE = eINSTANCE.getWording_PenStyle();

		/**
		 * The meta object literal for the '<em><b>Hatch Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__HATCH_SPACING = eINSTANCE.getWording_HatchSpacing();

		/**
		 * The meta object literal for the '<em><b>Hatch Angle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__HATCH_ANGLE = eINSTANCE.getWording_HatchAngle();

		/**
		 * The meta object literal for the '<em><b>Hatch Inset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WORDING__HATCH_INSET = eINSTANCE.getWording_HatchInset();

		/**
		 * The meta object literal for the '<em><b>Bridges</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__BRIDGES = eINSTANCE.getWording_Bridges();

		/**
		 * The meta object literal for the '<em><b>Islands</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WORDING__ISLANDS = eINSTANCE.getWording_Islands();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.TextSpanImpl <em>Text Span</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.TextSpanImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getTextSpan()
		 * @generated
		 */
		public static final EClass TEXT_SPAN = eINSTANCE.getTextSpan();

		/**
		 * The meta object literal for the '<em><b>Start</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute TEXT_SPAN__START = eINSTANCE.getTextSpan_Start();

		/**
		 * The meta object literal for the '<em><b>End</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute TEXT_SPAN__END = eINSTANCE.getTextSpan_End();

		/**
		 * The meta object literal for the '<em><b>Font</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference TEXT_SPAN__FONT = eINSTANCE.getTextSpan_Font();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute TEXT_SPAN__HEIGHT = eINSTANCE.getTextSpan_Height();

		/**
		 * The meta object literal for the '<em><b>Features</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute TEXT_SPAN__FEATURES = eINSTANCE.getTextSpan_Features();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.NudgeImpl <em>Nudge</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.NudgeImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getNudge()
		 * @generated
		 */
		public static final EClass NUDGE = eINSTANCE.getNudge();

		/**
		 * The meta object literal for the '<em><b>Index</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute NUDGE__INDEX = eINSTANCE.getNudge_Index();

		/**
		 * The meta object literal for the '<em><b>Dx</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute NUDGE__DX = eINSTANCE.getNudge_Dx();

		/**
		 * The meta object literal for the '<em><b>Dy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute NUDGE__DY = eINSTANCE.getNudge_Dy();

		/**
		 * The meta object literal for the '<em><b>Turn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute NUDGE__TURN = eINSTANCE.getNudge_Turn();

		/**
		 * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute NUDGE__SCALE = eINSTANCE.getNudge_Scale();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.BarImpl <em>Bar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.BarImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBar()
		 * @generated
		 */
		public static final EClass BAR = eINSTANCE.getBar();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BAR__KIND = eINSTANCE.getBar_Kind();

		/**
		 * The meta object literal for the '<em><b>Offset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BAR__OFFSET = eINSTANCE.getBar_Offset();

		/**
		 * The meta object literal for the '<em><b>Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BAR__THICKNESS = eINSTANCE.getBar_Thickness();

		/**
		 * The meta object literal for the '<em><b>Overhang</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BAR__OVERHANG = eINSTANCE.getBar_Overhang();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.BridgeImpl <em>Bridge</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.BridgeImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBridge()
		 * @generated
		 */
		public static final EClass BRIDGE = eINSTANCE.getBridge();

		/**
		 * The meta object literal for the '<em><b>One</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__ONE = eINSTANCE.getBridge_One();

		/**
		 * The meta object literal for the '<em><b>Other</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__OTHER = eINSTANCE.getBridge_Other();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__WIDTH = eINSTANCE.getBridge_Width();

		/**
		 * The meta object literal for the '<em><b>Placed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__PLACED = eINSTANCE.getBridge_Placed();

		/**
		 * The meta object literal for the '<em><b>One X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__ONE_X = eINSTANCE.getBridge_OneX();

		/**
		 * The meta object literal for the '<em><b>One Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__ONE_Y = eINSTANCE.getBridge_OneY();

		/**
		 * The meta object literal for the '<em><b>Other X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__OTHER_X = eINSTANCE.getBridge_OtherX();

		/**
		 * The meta object literal for the '<em><b>Other Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE__OTHER_Y = eINSTANCE.getBridge_OtherY();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.IslandBridgesImpl <em>Island Bridges</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.IslandBridgesImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getIslandBridges()
		 * @generated
		 */
		public static final EClass ISLAND_BRIDGES = eINSTANCE.getIslandBridges();

		/**
		 * The meta object literal for the '<em><b>Index</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ISLAND_BRIDGES__INDEX = eINSTANCE.getIslandBridges_Index();

		/**
		 * The meta object literal for the '<em><b>Island</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ISLAND_BRIDGES__ISLAND = eINSTANCE.getIslandBridges_Island();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute ISLAND_BRIDGES__COUNT = eINSTANCE.getIslandBridges_Count();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference ISLAND_BRIDGES__AT = eINSTANCE.getIslandBridges_At();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.BridgeAngleImpl <em>Bridge Angle</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.BridgeAngleImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBridgeAngle()
		 * @generated
		 */
		public static final EClass BRIDGE_ANGLE = eINSTANCE.getBridgeAngle();

		/**
		 * The meta object literal for the '<em><b>Angle</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute BRIDGE_ANGLE__ANGLE = eINSTANCE.getBridgeAngle_Angle();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.FontRefImpl <em>Font Ref</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.FontRefImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getFontRef()
		 * @generated
		 */
		public static final EClass FONT_REF = eINSTANCE.getFontRef();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute FONT_REF__NAME = eINSTANCE.getFontRef_Name();

		/**
		 * The meta object literal for the '<em><b>Style</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute FONT_REF__STYLE = eINSTANCE.getFontRef_Style();

		/**
		 * The meta object literal for the '<em><b>Digest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute FONT_REF__DIGEST = eINSTANCE.getFontRef_Digest();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute FONT_REF__FILE = eINSTANCE.getFontRef_File();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.OutlineImpl <em>Outline</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.OutlineImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getOutline()
		 * @generated
		 */
		public static final EClass OUTLINE = eINSTANCE.getOutline();

		/**
		 * The meta object literal for the '<em><b>Path Data</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OUTLINE__PATH_DATA = eINSTANCE.getOutline_PathData();

		/**
		 * The meta object literal for the '<em><b>Corner Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute OUTLINE__CORNER_RADIUS = eINSTANCE.getOutline_CornerRadius();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.PictureImpl <em>Picture</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.PictureImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getPicture()
		 * @generated
		 */
		public static final EClass PICTURE = eINSTANCE.getPicture();

		/**
		 * The meta object literal for the '<em><b>Image</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__IMAGE = eINSTANCE.getPicture_Image();

		/**
		 * The meta object literal for the '<em><b>Media Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__MEDIA_TYPE = eINSTANCE.getPicture_MediaType();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__WIDTH = eINSTANCE.getPicture_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__HEIGHT = eINSTANCE.getPicture_Height();

		/**
		 * The meta object literal for the '<em><b>Link</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__LINK = eINSTANCE.getPicture_Link();

		/**
		 * The meta object literal for the '<em><b>Edge</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference PICTURE__EDGE = eINSTANCE.getPicture_Edge();

		/**
		 * The meta object literal for the '<em><b>Bleed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__BLEED = eINSTANCE.getPicture_Bleed();

		/**
		 * The meta object literal for the '<em><b>Bleed Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE__BLEED_KIND = eINSTANCE.getPicture_BleedKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.PictureEdgeImpl <em>Picture Edge</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.PictureEdgeImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getPictureEdge()
		 * @generated
		 */
		public static final EClass PICTURE_EDGE = eINSTANCE.getPictureEdge();

		/**
		 * The meta object literal for the '<em><b>Backdrop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__BACKDROP = eINSTANCE.getPictureEdge_Backdrop();

		/**
		 * The meta object literal for the '<em><b>Colour</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__COLOUR = eINSTANCE.getPictureEdge_Colour();

		/**
		 * The meta object literal for the '<em><b>Difference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__DIFFERENCE = eINSTANCE.getPictureEdge_Difference();

		/**
		 * The meta object literal for the '<em><b>Shadow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__SHADOW = eINSTANCE.getPictureEdge_Shadow();

		/**
		 * The meta object literal for the '<em><b>Specks</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__SPECKS = eINSTANCE.getPictureEdge_Specks();

		/**
		 * The meta object literal for the '<em><b>Holes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__HOLES = eINSTANCE.getPictureEdge_Holes();

		/**
		 * The meta object literal for the '<em><b>Smoothing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__SMOOTHING = eINSTANCE.getPictureEdge_Smoothing();

		/**
		 * The meta object literal for the '<em><b>Border</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__BORDER = eINSTANCE.getPictureEdge_Border();

		/**
		 * The meta object literal for the '<em><b>Whole</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute PICTURE_EDGE__WHOLE = eINSTANCE.getPictureEdge_Whole();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.MatImpl <em>Mat</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.MatImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMat()
		 * @generated
		 */
		public static final EClass MAT = eINSTANCE.getMat();

		/**
		 * The meta object literal for the '<em><b>Behind</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference MAT__BEHIND = eINSTANCE.getMat_Behind();

		/**
		 * The meta object literal for the '<em><b>Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__DISTANCE = eINSTANCE.getMat_Distance();

		/**
		 * The meta object literal for the '<em><b>Corners</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__CORNERS = eINSTANCE.getMat_Corners();

		/**
		 * The meta object literal for the '<em><b>Mitre Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__MITRE_LIMIT = eINSTANCE.getMat_MitreLimit();

		/**
		 * The meta object literal for the '<em><b>Holes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__HOLES = eINSTANCE.getMat_Holes();

		/**
		 * The meta object literal for the '<em><b>Smoothing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__SMOOTHING = eINSTANCE.getMat_Smoothing();

		/**
		 * The meta object literal for the '<em><b>Form</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__FORM = eINSTANCE.getMat_Form();

		/**
		 * The meta object literal for the '<em><b>Reach</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__REACH = eINSTANCE.getMat_Reach();

		/**
		 * The meta object literal for the '<em><b>Shadow X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__SHADOW_X = eINSTANCE.getMat_ShadowX();

		/**
		 * The meta object literal for the '<em><b>Shadow Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__SHADOW_Y = eINSTANCE.getMat_ShadowY();

		/**
		 * The meta object literal for the '<em><b>Frame Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__FRAME_KIND = eINSTANCE.getMat_FrameKind();

		/**
		 * The meta object literal for the '<em><b>Frame Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__FRAME_MARGIN = eINSTANCE.getMat_FrameMargin();

		/**
		 * The meta object literal for the '<em><b>Frame Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__FRAME_WIDTH = eINSTANCE.getMat_FrameWidth();

		/**
		 * The meta object literal for the '<em><b>Corner Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__CORNER_RADIUS = eINSTANCE.getMat_CornerRadius();

		/**
		 * The meta object literal for the '<em><b>Smallest Hole</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute MAT__SMALLEST_HOLE = eINSTANCE.getMat_SmallestHole();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.CombinationImpl <em>Combination</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.CombinationImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getCombination()
		 * @generated
		 */
		public static final EClass COMBINATION = eINSTANCE.getCombination();

		/**
		 * The meta object literal for the '<em><b>Rule</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute COMBINATION__RULE = eINSTANCE.getCombination_Rule();

		/**
		 * The meta object literal for the '<em><b>Parts</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference COMBINATION__PARTS = eINSTANCE.getCombination_Parts();

		/**
		 * The meta object literal for the '<em><b>Corner Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute COMBINATION__CORNER_RADIUS = eINSTANCE.getCombination_CornerRadius();

		/**
		 * The meta object literal for the '{@link org.frisket.model.impl.WeedLinesImpl <em>Weed Lines</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.WeedLinesImpl
		 * @see org.frisket.model.impl.FrisketPackageImpl#getWeedLines()
		 * @generated
		 */
		public static final EClass WEED_LINES = eINSTANCE.getWeedLines();

		/**
		 * The meta object literal for the '<em><b>Around</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EReference WEED_LINES__AROUND = eINSTANCE.getWeedLines_Around();

		/**
		 * The meta object literal for the '<em><b>Margin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WEED_LINES__MARGIN = eINSTANCE.getWeedLines_Margin();

		/**
		 * The meta object literal for the '<em><b>Between</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WEED_LINES__BETWEEN = eINSTANCE.getWeedLines_Between();

		/**
		 * The meta object literal for the '<em><b>Spacing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WEED_LINES__SPACING = eINSTANCE.getWeedLines_Spacing();

		/**
		 * The meta object literal for the '<em><b>Clearance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		public static final EAttribute WEED_LINES__CLEARANCE = eINSTANCE.getWeedLines_Clearance();

		/**
		 * The meta object literal for the '{@link org.frisket.model.Stage <em>Stage</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.Stage
		 * @see org.frisket.model.impl.FrisketPackageImpl#getStage()
		 * @generated
		 */
		public static final EEnum STAGE = eINSTANCE.getStage();

		/**
		 * The meta object literal for the '{@link org.frisket.model.MarkKind <em>Mark Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.MarkKind
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMarkKind()
		 * @generated
		 */
		public static final EEnum MARK_KIND = eINSTANCE.getMarkKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.SheetFit <em>Sheet Fit</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.SheetFit
		 * @see org.frisket.model.impl.FrisketPackageImpl#getSheetFit()
		 * @generated
		 */
		public static final EEnum SHEET_FIT = eINSTANCE.getSheetFit();

		/**
		 * The meta object literal for the '{@link org.frisket.model.Turning <em>Turning</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.Turning
		 * @see org.frisket.model.impl.FrisketPackageImpl#getTurning()
		 * @generated
		 */
		public static final EEnum TURNING = eINSTANCE.getTurning();

		/**
		 * The meta object literal for the '{@link org.frisket.model.OperationKind <em>Operation Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.OperationKind
		 * @see org.frisket.model.impl.FrisketPackageImpl#getOperationKind()
		 * @generated
		 */
		public static final EEnum OPERATION_KIND = eINSTANCE.getOperationKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.Alignment <em>Alignment</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.Alignment
		 * @see org.frisket.model.impl.FrisketPackageImpl#getAlignment()
		 * @generated
		 */
		public static final EEnum ALIGNMENT = eINSTANCE.getAlignment();

		/**
		 * The meta object literal for the '{@link org.frisket.model.Flow <em>Flow</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.Flow
		 * @see org.frisket.model.impl.FrisketPackageImpl#getFlow()
		 * @generated
		 */
		public static final EEnum FLOW = eINSTANCE.getFlow();

		/**
		 * The meta object literal for the '{@link org.frisket.model.PenStyle <em>Pen Style</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.PenStyle
		 * @see org.frisket.model.impl.FrisketPackageImpl#getPenStyle()
		 * @generated
		 */
		public static final EEnum PEN_STYLE = eINSTANCE.getPenStyle();

		/**
		 * The meta object literal for the '{@link org.frisket.model.BarKind <em>Bar Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.BarKind
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBarKind()
		 * @generated
		 */
		public static final EEnum BAR_KIND = eINSTANCE.getBarKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.BackdropRule <em>Backdrop Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.BackdropRule
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBackdropRule()
		 * @generated
		 */
		public static final EEnum BACKDROP_RULE = eINSTANCE.getBackdropRule();

		/**
		 * The meta object literal for the '{@link org.frisket.model.EdgeHoles <em>Edge Holes</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.EdgeHoles
		 * @see org.frisket.model.impl.FrisketPackageImpl#getEdgeHoles()
		 * @generated
		 */
		public static final EEnum EDGE_HOLES = eINSTANCE.getEdgeHoles();

		/**
		 * The meta object literal for the '{@link org.frisket.model.BleedKind <em>Bleed Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.BleedKind
		 * @see org.frisket.model.impl.FrisketPackageImpl#getBleedKind()
		 * @generated
		 */
		public static final EEnum BLEED_KIND = eINSTANCE.getBleedKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.CornerJoin <em>Corner Join</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.CornerJoin
		 * @see org.frisket.model.impl.FrisketPackageImpl#getCornerJoin()
		 * @generated
		 */
		public static final EEnum CORNER_JOIN = eINSTANCE.getCornerJoin();

		/**
		 * The meta object literal for the '{@link org.frisket.model.HoleRule <em>Hole Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.HoleRule
		 * @see org.frisket.model.impl.FrisketPackageImpl#getHoleRule()
		 * @generated
		 */
		public static final EEnum HOLE_RULE = eINSTANCE.getHoleRule();

		/**
		 * The meta object literal for the '{@link org.frisket.model.MatForm <em>Mat Form</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.MatForm
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMatForm()
		 * @generated
		 */
		public static final EEnum MAT_FORM = eINSTANCE.getMatForm();

		/**
		 * The meta object literal for the '{@link org.frisket.model.FrameKind <em>Frame Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.FrameKind
		 * @see org.frisket.model.impl.FrisketPackageImpl#getFrameKind()
		 * @generated
		 */
		public static final EEnum FRAME_KIND = eINSTANCE.getFrameKind();

		/**
		 * The meta object literal for the '{@link org.frisket.model.CombinationRule <em>Combination Rule</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.CombinationRule
		 * @see org.frisket.model.impl.FrisketPackageImpl#getCombinationRule()
		 * @generated
		 */
		public static final EEnum COMBINATION_RULE = eINSTANCE.getCombinationRule();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see org.frisket.model.impl.FrisketPackageImpl#getDate()
		 * @generated
		 */
		public static final EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Moment</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.Instant
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMoment()
		 * @generated
		 */
		public static final EDataType MOMENT = eINSTANCE.getMoment();

		/**
		 * The meta object literal for the '<em>Matrix</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.Matrix
		 * @see org.frisket.model.impl.FrisketPackageImpl#getMatrix()
		 * @generated
		 */
		public static final EDataType MATRIX = eINSTANCE.getMatrix();

		/**
		 * The meta object literal for the '<em>Image Bytes</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.ImageBytes
		 * @see org.frisket.model.impl.FrisketPackageImpl#getImageBytes()
		 * @generated
		 */
		public static final EDataType IMAGE_BYTES = eINSTANCE.getImageBytes();

		/**
		 * The meta object literal for the '<em>Number</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.frisket.model.impl.FrisketPackageImpl#getNumber()
		 * @generated
		 */
		public static final EDataType NUMBER = eINSTANCE.getNumber();

	}

} //FrisketPackageImpl

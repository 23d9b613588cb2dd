/**
 */
package org.frisket.model.impl;

import java.time.Instant;
import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.frisket.model.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class FrisketFactoryImpl extends EFactoryImpl implements FrisketFactory {
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final FrisketFactoryImpl eINSTANCE = init();

	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static FrisketFactoryImpl init() {
		try {
			FrisketFactoryImpl theFrisketFactory = (FrisketFactoryImpl)EPackage.Registry.INSTANCE.getEFactory(FrisketPackageImpl.eNS_URI);
			if (theFrisketFactory != null) {
				return theFrisketFactory;
			}
		}
		catch (Exception exception) {
			EcorePlugin.INSTANCE.log(exception);
		}
		return new FrisketFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FrisketFactoryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass) {
		switch (eClass.getClassifierID()) {
			case FrisketPackageImpl.JOB: return createJob();
			case FrisketPackageImpl.STAGE_CHANGE: return createStageChange();
			case FrisketPackageImpl.SHEET: return createSheet();
			case FrisketPackageImpl.PLACEMENT: return createPlacement();
			case FrisketPackageImpl.REGISTER_MARK: return createRegisterMark();
			case FrisketPackageImpl.MEASURED_MARK: return createMeasuredMark();
			case FrisketPackageImpl.GUEST: return createGuest();
			case FrisketPackageImpl.LAYING: return createLaying();
			case FrisketPackageImpl.LAYER: return createLayer();
			case FrisketPackageImpl.GROUP: return createGroup();
			case FrisketPackageImpl.GUIDE: return createGuide();
			case FrisketPackageImpl.OPERATION: return createOperation();
			case FrisketPackageImpl.WORDING: return createWording();
			case FrisketPackageImpl.TEXT_SPAN: return createTextSpan();
			case FrisketPackageImpl.NUDGE: return createNudge();
			case FrisketPackageImpl.BAR: return createBar();
			case FrisketPackageImpl.BRIDGE: return createBridge();
			case FrisketPackageImpl.ISLAND_BRIDGES: return createIslandBridges();
			case FrisketPackageImpl.BRIDGE_ANGLE: return createBridgeAngle();
			case FrisketPackageImpl.FONT_REF: return createFontRef();
			case FrisketPackageImpl.OUTLINE: return createOutline();
			case FrisketPackageImpl.PICTURE: return createPicture();
			case FrisketPackageImpl.PICTURE_EDGE: return createPictureEdge();
			case FrisketPackageImpl.MAT: return createMat();
			case FrisketPackageImpl.COMBINATION: return createCombination();
			case FrisketPackageImpl.WEED_LINES: return createWeedLines();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue) {
		switch (eDataType.getClassifierID()) {
			case FrisketPackageImpl.STAGE:
				return createStageFromString(eDataType, initialValue);
			case FrisketPackageImpl.MARK_KIND:
				return createMarkKindFromString(eDataType, initialValue);
			case FrisketPackageImpl.SHEET_FIT:
				return createSheetFitFromString(eDataType, initialValue);
			case FrisketPackageImpl.TURNING:
				return createTurningFromString(eDataType, initialValue);
			case FrisketPackageImpl.OPERATION_KIND:
				return createOperationKindFromString(eDataType, initialValue);
			case FrisketPackageImpl.ALIGNMENT:
				return createAlignmentFromString(eDataType, initialValue);
			case FrisketPackageImpl.FLOW:
				return createFlowFromString(eDataType, initialValue);
			case FrisketPackageImpl.PEN_STYLE:
				return createPenStyleFromString(eDataType, initialValue);
			case FrisketPackageImpl.BAR_KIND:
				return createBarKindFromString(eDataType, initialValue);
			case FrisketPackageImpl.BACKDROP_RULE:
				return createBackdropRuleFromString(eDataType, initialValue);
			case FrisketPackageImpl.EDGE_HOLES:
				return createEdgeHolesFromString(eDataType, initialValue);
			case FrisketPackageImpl.BLEED_KIND:
				return createBleedKindFromString(eDataType, initialValue);
			case FrisketPackageImpl.CORNER_JOIN:
				return createCornerJoinFromString(eDataType, initialValue);
			case FrisketPackageImpl.HOLE_RULE:
				return createHoleRuleFromString(eDataType, initialValue);
			case FrisketPackageImpl.MAT_FORM:
				return createMatFormFromString(eDataType, initialValue);
			case FrisketPackageImpl.FRAME_KIND:
				return createFrameKindFromString(eDataType, initialValue);
			case FrisketPackageImpl.COMBINATION_RULE:
				return createCombinationRuleFromString(eDataType, initialValue);
			case FrisketPackageImpl.DATE:
				return createDateFromString(eDataType, initialValue);
			case FrisketPackageImpl.MOMENT:
				return createMomentFromString(eDataType, initialValue);
			case FrisketPackageImpl.MATRIX:
				return createMatrixFromString(eDataType, initialValue);
			case FrisketPackageImpl.IMAGE_BYTES:
				return createImageBytesFromString(eDataType, initialValue);
			case FrisketPackageImpl.NUMBER:
				return createNumberFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue) {
		switch (eDataType.getClassifierID()) {
			case FrisketPackageImpl.STAGE:
				return convertStageToString(eDataType, instanceValue);
			case FrisketPackageImpl.MARK_KIND:
				return convertMarkKindToString(eDataType, instanceValue);
			case FrisketPackageImpl.SHEET_FIT:
				return convertSheetFitToString(eDataType, instanceValue);
			case FrisketPackageImpl.TURNING:
				return convertTurningToString(eDataType, instanceValue);
			case FrisketPackageImpl.OPERATION_KIND:
				return convertOperationKindToString(eDataType, instanceValue);
			case FrisketPackageImpl.ALIGNMENT:
				return convertAlignmentToString(eDataType, instanceValue);
			case FrisketPackageImpl.FLOW:
				return convertFlowToString(eDataType, instanceValue);
			case FrisketPackageImpl.PEN_STYLE:
				return convertPenStyleToString(eDataType, instanceValue);
			case FrisketPackageImpl.BAR_KIND:
				return convertBarKindToString(eDataType, instanceValue);
			case FrisketPackageImpl.BACKDROP_RULE:
				return convertBackdropRuleToString(eDataType, instanceValue);
			case FrisketPackageImpl.EDGE_HOLES:
				return convertEdgeHolesToString(eDataType, instanceValue);
			case FrisketPackageImpl.BLEED_KIND:
				return convertBleedKindToString(eDataType, instanceValue);
			case FrisketPackageImpl.CORNER_JOIN:
				return convertCornerJoinToString(eDataType, instanceValue);
			case FrisketPackageImpl.HOLE_RULE:
				return convertHoleRuleToString(eDataType, instanceValue);
			case FrisketPackageImpl.MAT_FORM:
				return convertMatFormToString(eDataType, instanceValue);
			case FrisketPackageImpl.FRAME_KIND:
				return convertFrameKindToString(eDataType, instanceValue);
			case FrisketPackageImpl.COMBINATION_RULE:
				return convertCombinationRuleToString(eDataType, instanceValue);
			case FrisketPackageImpl.DATE:
				return convertDateToString(eDataType, instanceValue);
			case FrisketPackageImpl.MOMENT:
				return convertMomentToString(eDataType, instanceValue);
			case FrisketPackageImpl.MATRIX:
				return convertMatrixToString(eDataType, instanceValue);
			case FrisketPackageImpl.IMAGE_BYTES:
				return convertImageBytesToString(eDataType, instanceValue);
			case FrisketPackageImpl.NUMBER:
				return convertNumberToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Job createJob() {
		JobImpl job = new JobImpl();
		return job;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StageChange createStageChange() {
		StageChangeImpl stageChange = new StageChangeImpl();
		return stageChange;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sheet createSheet() {
		SheetImpl sheet = new SheetImpl();
		return sheet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Placement createPlacement() {
		PlacementImpl placement = new PlacementImpl();
		return placement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RegisterMark createRegisterMark() {
		RegisterMarkImpl registerMark = new RegisterMarkImpl();
		return registerMark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MeasuredMark createMeasuredMark() {
		MeasuredMarkImpl measuredMark = new MeasuredMarkImpl();
		return measuredMark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Guest createGuest() {
		GuestImpl guest = new GuestImpl();
		return guest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Laying createLaying() {
		LayingImpl laying = new LayingImpl();
		return laying;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Layer createLayer() {
		LayerImpl layer = new LayerImpl();
		return layer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Group createGroup() {
		GroupImpl group = new GroupImpl();
		return group;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Guide createGuide() {
		GuideImpl guide = new GuideImpl();
		return guide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Operation createOperation() {
		OperationImpl operation = new OperationImpl();
		return operation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Wording createWording() {
		WordingImpl wording = new WordingImpl();
		return wording;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TextSpan createTextSpan() {
		TextSpanImpl textSpan = new TextSpanImpl();
		return textSpan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Nudge createNudge() {
		NudgeImpl nudge = new NudgeImpl();
		return nudge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Bar createBar() {
		BarImpl bar = new BarImpl();
		return bar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Bridge createBridge() {
		BridgeImpl bridge = new BridgeImpl();
		return bridge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public IslandBridges createIslandBridges() {
		IslandBridgesImpl islandBridges = new IslandBridgesImpl();
		return islandBridges;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BridgeAngle createBridgeAngle() {
		BridgeAngleImpl bridgeAngle = new BridgeAngleImpl();
		return bridgeAngle;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FontRef createFontRef() {
		FontRefImpl fontRef = new FontRefImpl();
		return fontRef;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Outline createOutline() {
		OutlineImpl outline = new OutlineImpl();
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Picture createPicture() {
		PictureImpl picture = new PictureImpl();
		return picture;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PictureEdge createPictureEdge() {
		PictureEdgeImpl pictureEdge = new PictureEdgeImpl();
		return pictureEdge;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mat createMat() {
		MatImpl mat = new MatImpl();
		return mat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Combination createCombination() {
		CombinationImpl combination = new CombinationImpl();
		return combination;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WeedLines createWeedLines() {
		WeedLinesImpl weedLines = new WeedLinesImpl();
		return weedLines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Stage createStageFromString(EDataType eDataType, String initialValue) {
		Stage result = Stage.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStageToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MarkKind createMarkKindFromString(EDataType eDataType, String initialValue) {
		MarkKind result = MarkKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMarkKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SheetFit createSheetFitFromString(EDataType eDataType, String initialValue) {
		SheetFit result = SheetFit.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSheetFitToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Turning createTurningFromString(EDataType eDataType, String initialValue) {
		Turning result = Turning.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTurningToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OperationKind createOperationKindFromString(EDataType eDataType, String initialValue) {
		OperationKind result = OperationKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOperationKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Alignment createAlignmentFromString(EDataType eDataType, String initialValue) {
		Alignment result = Alignment.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAlignmentToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Flow createFlowFromString(EDataType eDataType, String initialValue) {
		Flow result = Flow.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlowToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PenStyle createPenStyleFromString(EDataType eDataType, String initialValue) {
		PenStyle result = PenStyle.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPenStyleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BarKind createBarKindFromString(EDataType eDataType, String initialValue) {
		BarKind result = BarKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBarKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BackdropRule createBackdropRuleFromString(EDataType eDataType, String initialValue) {
		BackdropRule result = BackdropRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBackdropRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public EdgeHoles createEdgeHolesFromString(EDataType eDataType, String initialValue) {
		EdgeHoles result = EdgeHoles.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEdgeHolesToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BleedKind createBleedKindFromString(EDataType eDataType, String initialValue) {
		BleedKind result = BleedKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBleedKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CornerJoin createCornerJoinFromString(EDataType eDataType, String initialValue) {
		CornerJoin result = CornerJoin.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCornerJoinToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public HoleRule createHoleRuleFromString(EDataType eDataType, String initialValue) {
		HoleRule result = HoleRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHoleRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MatForm createMatFormFromString(EDataType eDataType, String initialValue) {
		MatForm result = MatForm.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMatFormToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FrameKind createFrameKindFromString(EDataType eDataType, String initialValue) {
		FrameKind result = FrameKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFrameKindToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CombinationRule createCombinationRuleFromString(EDataType eDataType, String initialValue) {
		CombinationRule result = CombinationRule.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCombinationRuleToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDate(final String it) {
		return it == null ? null : java.time.LocalDate.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDateFromString(EDataType eDataType, String initialValue) {
		return createDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDate(final LocalDate it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateToString(EDataType eDataType, Object instanceValue) {
		return convertDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createMoment(final String it) {
		return it == null ? null : java.time.Instant.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Instant createMomentFromString(EDataType eDataType, String initialValue) {
		return createMoment(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMoment(final Instant it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMomentToString(EDataType eDataType, Object instanceValue) {
		return convertMoment((Instant)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Matrix createMatrix(final String it) {
		return it == null ? null : Matrix.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Matrix createMatrixFromString(EDataType eDataType, String initialValue) {
		return createMatrix(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMatrix(final Matrix it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMatrixToString(EDataType eDataType, Object instanceValue) {
		return convertMatrix((Matrix)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ImageBytes createImageBytes(final String it) {
		return it == null ? null : ImageBytes.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ImageBytes createImageBytesFromString(EDataType eDataType, String initialValue) {
		return createImageBytes(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertImageBytes(final ImageBytes it) {
		return it == null ? null : it.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertImageBytesToString(EDataType eDataType, Object instanceValue) {
		return convertImageBytes((ImageBytes)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public double createNumber(final String it) {
		return org.frisket.model.internal.NumberText.parse(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Double createNumberFromString(EDataType eDataType, String initialValue) {
		return createNumber(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertNumber(final double it) {
		return org.frisket.model.internal.NumberText.write(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertNumberToString(EDataType eDataType, Object instanceValue) {
		return instanceValue == null ? null : convertNumber((Double)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FrisketPackageImpl getFrisketPackage() {
		return (FrisketPackageImpl)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static FrisketPackageImpl getPackage() {
		return FrisketPackageImpl.eINSTANCE;
	}

} //FrisketFactoryImpl

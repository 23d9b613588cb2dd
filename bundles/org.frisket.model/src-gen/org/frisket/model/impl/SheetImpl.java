/**
 */
package org.frisket.model.impl;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.frisket.model.MeasuredMark;
import org.frisket.model.Placement;
import org.frisket.model.RegisterMark;
import org.frisket.model.Sheet;
import org.frisket.model.SheetFit;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getStock <em>Stock</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getMargin <em>Margin</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getGap <em>Gap</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#isRoll <em>Roll</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getLeftover <em>Leftover</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getPlacements <em>Placements</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getPrintMargin <em>Print Margin</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getPrinter <em>Printer</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getMarks <em>Marks</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getFit <em>Fit</em>}</li>
 *   <li>{@link org.frisket.model.impl.SheetImpl#getMeasured <em>Measured</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SheetImpl extends MinimalEObjectImpl.Container implements Sheet {
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getStock() <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStock()
	 * @generated
	 * @ordered
	 */
	protected static final String STOCK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStock() <em>Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStock()
	 * @generated
	 * @ordered
	 */
	protected String stock = STOCK_EDEFAULT;

	/**
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected String colour = COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidth() <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidth()
	 * @generated
	 * @ordered
	 */
	protected double width = WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeight() <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeight()
	 * @generated
	 * @ordered
	 */
	protected double height = HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMargin() <em>Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMargin()
	 * @generated
	 * @ordered
	 */
	protected double margin = MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected static final double GAP_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getGap() <em>Gap</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGap()
	 * @generated
	 * @ordered
	 */
	protected double gap = GAP_EDEFAULT;

	/**
	 * The default value of the '{@link #isRoll() <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRoll()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ROLL_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRoll() <em>Roll</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRoll()
	 * @generated
	 * @ordered
	 */
	protected boolean roll = ROLL_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeftover() <em>Leftover</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftover()
	 * @generated
	 * @ordered
	 */
	protected static final String LEFTOVER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeftover() <em>Leftover</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftover()
	 * @generated
	 * @ordered
	 */
	protected String leftover = LEFTOVER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPlacements() <em>Placements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacements()
	 * @generated
	 * @ordered
	 */
	protected EList<Placement> placements;

	/**
	 * The default value of the '{@link #getPrintMargin() <em>Print Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrintMargin()
	 * @generated
	 * @ordered
	 */
	protected static final double PRINT_MARGIN_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getPrintMargin() <em>Print Margin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrintMargin()
	 * @generated
	 * @ordered
	 */
	protected double printMargin = PRINT_MARGIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getPrinter() <em>Printer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrinter()
	 * @generated
	 * @ordered
	 */
	protected static final String PRINTER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPrinter() <em>Printer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrinter()
	 * @generated
	 * @ordered
	 */
	protected String printer = PRINTER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMarks() <em>Marks</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarks()
	 * @generated
	 * @ordered
	 */
	protected EList<RegisterMark> marks;

	/**
	 * The default value of the '{@link #getFit() <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFit()
	 * @generated
	 * @ordered
	 */
	protected static final SheetFit FIT_EDEFAULT = SheetFit.SIMILARITY;

	/**
	 * The cached value of the '{@link #getFit() <em>Fit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFit()
	 * @generated
	 * @ordered
	 */
	protected SheetFit fit = FIT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMeasured() <em>Measured</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected EList<MeasuredMark> measured;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId() {
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId) {
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStock() {
		return stock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStock(String newStock) {
		String oldStock = stock;
		stock = newStock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__STOCK, oldStock, stock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(String newColour) {
		String oldColour = colour;
		colour = newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__COLOUR, oldColour, colour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidth() {
		return width;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(double newWidth) {
		double oldWidth = width;
		width = newWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__WIDTH, oldWidth, width));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeight() {
		return height;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(double newHeight) {
		double oldHeight = height;
		height = newHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__HEIGHT, oldHeight, height));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMargin() {
		return margin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMargin(double newMargin) {
		double oldMargin = margin;
		margin = newMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__MARGIN, oldMargin, margin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGap() {
		return gap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGap(double newGap) {
		double oldGap = gap;
		gap = newGap;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__GAP, oldGap, gap));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRoll() {
		return roll;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoll(boolean newRoll) {
		boolean oldRoll = roll;
		roll = newRoll;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__ROLL, oldRoll, roll));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLeftover() {
		return leftover;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeftover(String newLeftover) {
		String oldLeftover = leftover;
		leftover = newLeftover;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__LEFTOVER, oldLeftover, leftover));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Placement> getPlacements() {
		if (placements == null) {
			placements = new EObjectContainmentEList<Placement>(Placement.class, this, FrisketPackageImpl.SHEET__PLACEMENTS);
		}
		return placements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPrintMargin() {
		return printMargin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrintMargin(double newPrintMargin) {
		double oldPrintMargin = printMargin;
		printMargin = newPrintMargin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__PRINT_MARGIN, oldPrintMargin, printMargin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPrinter() {
		return printer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrinter(String newPrinter) {
		String oldPrinter = printer;
		printer = newPrinter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__PRINTER, oldPrinter, printer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<RegisterMark> getMarks() {
		if (marks == null) {
			marks = new EObjectContainmentEList<RegisterMark>(RegisterMark.class, this, FrisketPackageImpl.SHEET__MARKS);
		}
		return marks;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SheetFit getFit() {
		return fit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFit(SheetFit newFit) {
		SheetFit oldFit = fit;
		fit = newFit == null ? FIT_EDEFAULT : newFit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.SHEET__FIT, oldFit, fit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<MeasuredMark> getMeasured() {
		if (measured == null) {
			measured = new EObjectContainmentEList<MeasuredMark>(MeasuredMark.class, this, FrisketPackageImpl.SHEET__MEASURED);
		}
		return measured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.SHEET__PLACEMENTS:
				return ((InternalEList<?>)getPlacements()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.SHEET__MARKS:
				return ((InternalEList<?>)getMarks()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.SHEET__MEASURED:
				return ((InternalEList<?>)getMeasured()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case FrisketPackageImpl.SHEET__ID:
				return getId();
			case FrisketPackageImpl.SHEET__NAME:
				return getName();
			case FrisketPackageImpl.SHEET__STOCK:
				return getStock();
			case FrisketPackageImpl.SHEET__COLOUR:
				return getColour();
			case FrisketPackageImpl.SHEET__WIDTH:
				return getWidth();
			case FrisketPackageImpl.SHEET__HEIGHT:
				return getHeight();
			case FrisketPackageImpl.SHEET__MARGIN:
				return getMargin();
			case FrisketPackageImpl.SHEET__GAP:
				return getGap();
			case FrisketPackageImpl.SHEET__ROLL:
				return isRoll();
			case FrisketPackageImpl.SHEET__LEFTOVER:
				return getLeftover();
			case FrisketPackageImpl.SHEET__PLACEMENTS:
				return getPlacements();
			case FrisketPackageImpl.SHEET__PRINT_MARGIN:
				return getPrintMargin();
			case FrisketPackageImpl.SHEET__PRINTER:
				return getPrinter();
			case FrisketPackageImpl.SHEET__MARKS:
				return getMarks();
			case FrisketPackageImpl.SHEET__FIT:
				return getFit();
			case FrisketPackageImpl.SHEET__MEASURED:
				return getMeasured();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case FrisketPackageImpl.SHEET__ID:
				setId((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__NAME:
				setName((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__STOCK:
				setStock((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__COLOUR:
				setColour((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__WIDTH:
				setWidth((Double)newValue);
				return;
			case FrisketPackageImpl.SHEET__HEIGHT:
				setHeight((Double)newValue);
				return;
			case FrisketPackageImpl.SHEET__MARGIN:
				setMargin((Double)newValue);
				return;
			case FrisketPackageImpl.SHEET__GAP:
				setGap((Double)newValue);
				return;
			case FrisketPackageImpl.SHEET__ROLL:
				setRoll((Boolean)newValue);
				return;
			case FrisketPackageImpl.SHEET__LEFTOVER:
				setLeftover((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__PLACEMENTS:
				getPlacements().clear();
				getPlacements().addAll((Collection<? extends Placement>)newValue);
				return;
			case FrisketPackageImpl.SHEET__PRINT_MARGIN:
				setPrintMargin((Double)newValue);
				return;
			case FrisketPackageImpl.SHEET__PRINTER:
				setPrinter((String)newValue);
				return;
			case FrisketPackageImpl.SHEET__MARKS:
				getMarks().clear();
				getMarks().addAll((Collection<? extends RegisterMark>)newValue);
				return;
			case FrisketPackageImpl.SHEET__FIT:
				setFit((SheetFit)newValue);
				return;
			case FrisketPackageImpl.SHEET__MEASURED:
				getMeasured().clear();
				getMeasured().addAll((Collection<? extends MeasuredMark>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.SHEET__ID:
				setId(ID_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__NAME:
				setName(NAME_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__STOCK:
				setStock(STOCK_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__WIDTH:
				setWidth(WIDTH_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__HEIGHT:
				setHeight(HEIGHT_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__MARGIN:
				setMargin(MARGIN_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__GAP:
				setGap(GAP_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__ROLL:
				setRoll(ROLL_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__LEFTOVER:
				setLeftover(LEFTOVER_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__PLACEMENTS:
				getPlacements().clear();
				return;
			case FrisketPackageImpl.SHEET__PRINT_MARGIN:
				setPrintMargin(PRINT_MARGIN_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__PRINTER:
				setPrinter(PRINTER_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__MARKS:
				getMarks().clear();
				return;
			case FrisketPackageImpl.SHEET__FIT:
				setFit(FIT_EDEFAULT);
				return;
			case FrisketPackageImpl.SHEET__MEASURED:
				getMeasured().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case FrisketPackageImpl.SHEET__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case FrisketPackageImpl.SHEET__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case FrisketPackageImpl.SHEET__STOCK:
				return STOCK_EDEFAULT == null ? stock != null : !STOCK_EDEFAULT.equals(stock);
			case FrisketPackageImpl.SHEET__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case FrisketPackageImpl.SHEET__WIDTH:
				return width != WIDTH_EDEFAULT;
			case FrisketPackageImpl.SHEET__HEIGHT:
				return height != HEIGHT_EDEFAULT;
			case FrisketPackageImpl.SHEET__MARGIN:
				return margin != MARGIN_EDEFAULT;
			case FrisketPackageImpl.SHEET__GAP:
				return gap != GAP_EDEFAULT;
			case FrisketPackageImpl.SHEET__ROLL:
				return roll != ROLL_EDEFAULT;
			case FrisketPackageImpl.SHEET__LEFTOVER:
				return LEFTOVER_EDEFAULT == null ? leftover != null : !LEFTOVER_EDEFAULT.equals(leftover);
			case FrisketPackageImpl.SHEET__PLACEMENTS:
				return placements != null && !placements.isEmpty();
			case FrisketPackageImpl.SHEET__PRINT_MARGIN:
				return printMargin != PRINT_MARGIN_EDEFAULT;
			case FrisketPackageImpl.SHEET__PRINTER:
				return PRINTER_EDEFAULT == null ? printer != null : !PRINTER_EDEFAULT.equals(printer);
			case FrisketPackageImpl.SHEET__MARKS:
				return marks != null && !marks.isEmpty();
			case FrisketPackageImpl.SHEET__FIT:
				return fit != FIT_EDEFAULT;
			case FrisketPackageImpl.SHEET__MEASURED:
				return measured != null && !measured.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (id: ");
		result.append(id);
		result.append(", name: ");
		result.append(name);
		result.append(", stock: ");
		result.append(stock);
		result.append(", colour: ");
		result.append(colour);
		result.append(", width: ");
		result.append(width);
		result.append(", height: ");
		result.append(height);
		result.append(", margin: ");
		result.append(margin);
		result.append(", gap: ");
		result.append(gap);
		result.append(", roll: ");
		result.append(roll);
		result.append(", leftover: ");
		result.append(leftover);
		result.append(", printMargin: ");
		result.append(printMargin);
		result.append(", printer: ");
		result.append(printer);
		result.append(", fit: ");
		result.append(fit);
		result.append(')');
		return result.toString();
	}

} //SheetImpl

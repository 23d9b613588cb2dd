/**
 */
package org.frisket.model.impl;

import java.time.LocalDate;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.frisket.model.Group;
import org.frisket.model.Guest;
import org.frisket.model.Guide;
import org.frisket.model.Job;
import org.frisket.model.Layer;
import org.frisket.model.Laying;
import org.frisket.model.Sheet;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Job</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.frisket.model.impl.JobImpl#getId <em>Id</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getCustomer <em>Customer</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getDue <em>Due</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getStage <em>Stage</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getNotes <em>Notes</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getLayers <em>Layers</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getHistory <em>History</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getGroups <em>Groups</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getGuides <em>Guides</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getSheets <em>Sheets</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getGuests <em>Guests</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getLaying <em>Laying</em>}</li>
 *   <li>{@link org.frisket.model.impl.JobImpl#getRepeats <em>Repeats</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JobImpl extends MinimalEObjectImpl.Container implements Job {
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
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected String number = NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCustomer() <em>Customer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCustomer()
	 * @generated
	 * @ordered
	 */
	protected static final String CUSTOMER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCustomer() <em>Customer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCustomer()
	 * @generated
	 * @ordered
	 */
	protected String customer = CUSTOMER_EDEFAULT;

	/**
	 * The default value of the '{@link #getDue() <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDue()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDue() <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDue()
	 * @generated
	 * @ordered
	 */
	protected LocalDate due = DUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final int QUANTITY_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected int quantity = QUANTITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected static final Stage STAGE_EDEFAULT = Stage.ENQUIRY;

	/**
	 * The cached value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected Stage stage = STAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotes() <em>Notes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotes()
	 * @generated
	 * @ordered
	 */
	protected String notes = NOTES_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLayers() <em>Layers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayers()
	 * @generated
	 * @ordered
	 */
	protected EList<Layer> layers;

	/**
	 * The cached value of the '{@link #getHistory() <em>History</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHistory()
	 * @generated
	 * @ordered
	 */
	protected EList<StageChange> history;

	/**
	 * The cached value of the '{@link #getGroups() <em>Groups</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroups()
	 * @generated
	 * @ordered
	 */
	protected EList<Group> groups;

	/**
	 * The cached value of the '{@link #getGuides() <em>Guides</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGuides()
	 * @generated
	 * @ordered
	 */
	protected EList<Guide> guides;

	/**
	 * The cached value of the '{@link #getSheets() <em>Sheets</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheets()
	 * @generated
	 * @ordered
	 */
	protected EList<Sheet> sheets;

	/**
	 * The cached value of the '{@link #getGuests() <em>Guests</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGuests()
	 * @generated
	 * @ordered
	 */
	protected EList<Guest> guests;

	/**
	 * The cached value of the '{@link #getLaying() <em>Laying</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaying()
	 * @generated
	 * @ordered
	 */
	protected Laying laying;

	/**
	 * The cached value of the '{@link #getRepeats() <em>Repeats</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRepeats()
	 * @generated
	 * @ordered
	 */
	protected EList<String> repeats;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JobImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return FrisketPackageImpl.Literals.JOB;
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
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(String newNumber) {
		String oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCustomer() {
		return customer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCustomer(String newCustomer) {
		String oldCustomer = customer;
		customer = newCustomer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__CUSTOMER, oldCustomer, customer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDue() {
		return due;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDue(LocalDate newDue) {
		LocalDate oldDue = due;
		due = newDue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__DUE, oldDue, due));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(int newQuantity) {
		int oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__QUANTITY, oldQuantity, quantity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage getStage() {
		return stage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStage(Stage newStage) {
		Stage oldStage = stage;
		stage = newStage == null ? STAGE_EDEFAULT : newStage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__STAGE, oldStage, stage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotes() {
		return notes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotes(String newNotes) {
		String oldNotes = notes;
		notes = newNotes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__NOTES, oldNotes, notes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Layer> getLayers() {
		if (layers == null) {
			layers = new EObjectContainmentEList<Layer>(Layer.class, this, FrisketPackageImpl.JOB__LAYERS);
		}
		return layers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<StageChange> getHistory() {
		if (history == null) {
			history = new EObjectContainmentEList<StageChange>(StageChange.class, this, FrisketPackageImpl.JOB__HISTORY);
		}
		return history;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Group> getGroups() {
		if (groups == null) {
			groups = new EObjectContainmentEList<Group>(Group.class, this, FrisketPackageImpl.JOB__GROUPS);
		}
		return groups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Guide> getGuides() {
		if (guides == null) {
			guides = new EObjectContainmentEList<Guide>(Guide.class, this, FrisketPackageImpl.JOB__GUIDES);
		}
		return guides;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Sheet> getSheets() {
		if (sheets == null) {
			sheets = new EObjectContainmentEList<Sheet>(Sheet.class, this, FrisketPackageImpl.JOB__SHEETS);
		}
		return sheets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<Guest> getGuests() {
		if (guests == null) {
			guests = new EObjectContainmentEList<Guest>(Guest.class, this, FrisketPackageImpl.JOB__GUESTS);
		}
		return guests;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Laying getLaying() {
		return laying;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLaying(Laying newLaying, NotificationChain msgs) {
		Laying oldLaying = laying;
		laying = newLaying;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__LAYING, oldLaying, newLaying);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLaying(Laying newLaying) {
		if (newLaying != laying) {
			NotificationChain msgs = null;
			if (laying != null)
				msgs = ((InternalEObject)laying).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.JOB__LAYING, null, msgs);
			if (newLaying != null)
				msgs = ((InternalEObject)newLaying).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - FrisketPackageImpl.JOB__LAYING, null, msgs);
			msgs = basicSetLaying(newLaying, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, FrisketPackageImpl.JOB__LAYING, newLaying, newLaying));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<String> getRepeats() {
		if (repeats == null) {
			repeats = new EDataTypeUniqueEList<String>(String.class, this, FrisketPackageImpl.JOB__REPEATS);
		}
		return repeats;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case FrisketPackageImpl.JOB__LAYERS:
				return ((InternalEList<?>)getLayers()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__HISTORY:
				return ((InternalEList<?>)getHistory()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__GROUPS:
				return ((InternalEList<?>)getGroups()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__GUIDES:
				return ((InternalEList<?>)getGuides()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__SHEETS:
				return ((InternalEList<?>)getSheets()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__GUESTS:
				return ((InternalEList<?>)getGuests()).basicRemove(otherEnd, msgs);
			case FrisketPackageImpl.JOB__LAYING:
				return basicSetLaying(null, msgs);
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
			case FrisketPackageImpl.JOB__ID:
				return getId();
			case FrisketPackageImpl.JOB__NUMBER:
				return getNumber();
			case FrisketPackageImpl.JOB__TITLE:
				return getTitle();
			case FrisketPackageImpl.JOB__CUSTOMER:
				return getCustomer();
			case FrisketPackageImpl.JOB__DUE:
				return getDue();
			case FrisketPackageImpl.JOB__QUANTITY:
				return getQuantity();
			case FrisketPackageImpl.JOB__STAGE:
				return getStage();
			case FrisketPackageImpl.JOB__NOTES:
				return getNotes();
			case FrisketPackageImpl.JOB__LAYERS:
				return getLayers();
			case FrisketPackageImpl.JOB__HISTORY:
				return getHistory();
			case FrisketPackageImpl.JOB__GROUPS:
				return getGroups();
			case FrisketPackageImpl.JOB__GUIDES:
				return getGuides();
			case FrisketPackageImpl.JOB__SHEETS:
				return getSheets();
			case FrisketPackageImpl.JOB__GUESTS:
				return getGuests();
			case FrisketPackageImpl.JOB__LAYING:
				return getLaying();
			case FrisketPackageImpl.JOB__REPEATS:
				return getRepeats();
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
			case FrisketPackageImpl.JOB__ID:
				setId((String)newValue);
				return;
			case FrisketPackageImpl.JOB__NUMBER:
				setNumber((String)newValue);
				return;
			case FrisketPackageImpl.JOB__TITLE:
				setTitle((String)newValue);
				return;
			case FrisketPackageImpl.JOB__CUSTOMER:
				setCustomer((String)newValue);
				return;
			case FrisketPackageImpl.JOB__DUE:
				setDue((LocalDate)newValue);
				return;
			case FrisketPackageImpl.JOB__QUANTITY:
				setQuantity((Integer)newValue);
				return;
			case FrisketPackageImpl.JOB__STAGE:
				setStage((Stage)newValue);
				return;
			case FrisketPackageImpl.JOB__NOTES:
				setNotes((String)newValue);
				return;
			case FrisketPackageImpl.JOB__LAYERS:
				getLayers().clear();
				getLayers().addAll((Collection<? extends Layer>)newValue);
				return;
			case FrisketPackageImpl.JOB__HISTORY:
				getHistory().clear();
				getHistory().addAll((Collection<? extends StageChange>)newValue);
				return;
			case FrisketPackageImpl.JOB__GROUPS:
				getGroups().clear();
				getGroups().addAll((Collection<? extends Group>)newValue);
				return;
			case FrisketPackageImpl.JOB__GUIDES:
				getGuides().clear();
				getGuides().addAll((Collection<? extends Guide>)newValue);
				return;
			case FrisketPackageImpl.JOB__SHEETS:
				getSheets().clear();
				getSheets().addAll((Collection<? extends Sheet>)newValue);
				return;
			case FrisketPackageImpl.JOB__GUESTS:
				getGuests().clear();
				getGuests().addAll((Collection<? extends Guest>)newValue);
				return;
			case FrisketPackageImpl.JOB__LAYING:
				setLaying((Laying)newValue);
				return;
			case FrisketPackageImpl.JOB__REPEATS:
				getRepeats().clear();
				getRepeats().addAll((Collection<? extends String>)newValue);
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
			case FrisketPackageImpl.JOB__ID:
				setId(ID_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__CUSTOMER:
				setCustomer(CUSTOMER_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__DUE:
				setDue(DUE_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__STAGE:
				setStage(STAGE_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__NOTES:
				setNotes(NOTES_EDEFAULT);
				return;
			case FrisketPackageImpl.JOB__LAYERS:
				getLayers().clear();
				return;
			case FrisketPackageImpl.JOB__HISTORY:
				getHistory().clear();
				return;
			case FrisketPackageImpl.JOB__GROUPS:
				getGroups().clear();
				return;
			case FrisketPackageImpl.JOB__GUIDES:
				getGuides().clear();
				return;
			case FrisketPackageImpl.JOB__SHEETS:
				getSheets().clear();
				return;
			case FrisketPackageImpl.JOB__GUESTS:
				getGuests().clear();
				return;
			case FrisketPackageImpl.JOB__LAYING:
				setLaying((Laying)null);
				return;
			case FrisketPackageImpl.JOB__REPEATS:
				getRepeats().clear();
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
			case FrisketPackageImpl.JOB__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case FrisketPackageImpl.JOB__NUMBER:
				return NUMBER_EDEFAULT == null ? number != null : !NUMBER_EDEFAULT.equals(number);
			case FrisketPackageImpl.JOB__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case FrisketPackageImpl.JOB__CUSTOMER:
				return CUSTOMER_EDEFAULT == null ? customer != null : !CUSTOMER_EDEFAULT.equals(customer);
			case FrisketPackageImpl.JOB__DUE:
				return DUE_EDEFAULT == null ? due != null : !DUE_EDEFAULT.equals(due);
			case FrisketPackageImpl.JOB__QUANTITY:
				return quantity != QUANTITY_EDEFAULT;
			case FrisketPackageImpl.JOB__STAGE:
				return stage != STAGE_EDEFAULT;
			case FrisketPackageImpl.JOB__NOTES:
				return NOTES_EDEFAULT == null ? notes != null : !NOTES_EDEFAULT.equals(notes);
			case FrisketPackageImpl.JOB__LAYERS:
				return layers != null && !layers.isEmpty();
			case FrisketPackageImpl.JOB__HISTORY:
				return history != null && !history.isEmpty();
			case FrisketPackageImpl.JOB__GROUPS:
				return groups != null && !groups.isEmpty();
			case FrisketPackageImpl.JOB__GUIDES:
				return guides != null && !guides.isEmpty();
			case FrisketPackageImpl.JOB__SHEETS:
				return sheets != null && !sheets.isEmpty();
			case FrisketPackageImpl.JOB__GUESTS:
				return guests != null && !guests.isEmpty();
			case FrisketPackageImpl.JOB__LAYING:
				return laying != null;
			case FrisketPackageImpl.JOB__REPEATS:
				return repeats != null && !repeats.isEmpty();
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
		result.append(", number: ");
		result.append(number);
		result.append(", title: ");
		result.append(title);
		result.append(", customer: ");
		result.append(customer);
		result.append(", due: ");
		result.append(due);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", stage: ");
		result.append(stage);
		result.append(", notes: ");
		result.append(notes);
		result.append(", repeats: ");
		result.append(repeats);
		result.append(')');
		return result.toString();
	}

} //JobImpl

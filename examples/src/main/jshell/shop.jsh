import javax.measure.quantity.*;
import org.hammerscale.forging.*;
import org.hammerscale.hinge.*;
import org.hammerscale.piece.*;
import org.hammerscale.stock.*;
import org.hammerscale.units.*;
import org.hammerscale.working.*;
import static org.hammerscale.units.Graduation.*;
import static org.hammerscale.units.Measures.*;

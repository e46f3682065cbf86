// JShell's own modes cut an answer at 80 or 1000 characters; this one prints all of it: --feedback shop.
// A start-up file is read before there are modes to copy, so this one is described from the ground up.
/set mode shop -quiet
/set prompt shop "\nshop> " "  ... "
/set truncation shop 1000000
/set format shop pre "|  "
/set format shop post "%n"
/set format shop errorpre "|  "
/set format shop errorpost "%n"
/set format shop errorline "{post}{pre}    {err}"
/set format shop action "created" added-primary
/set format shop action "modified" modified-primary
/set format shop action "replaced" replaced-primary
/set format shop action "overwrote" overwrote-primary
/set format shop action "dropped" dropped-primary
/set format shop name "%1$s"
/set format shop type "%2$s"
/set format shop value "%3$s"
/set format shop unresolved "%4$s"
/set format shop errors "%5$s"
/set format shop err "%6$s"
/set format shop display ""
/set format shop display "{name} ==> {value}{post}" added,modified,replaced-expression,varvalue,assignment,varinit,vardecl-ok-primary
/set format shop display "{pre}{action} {name}{post}" added,modified,replaced,overwrote,dropped-class,interface,enum,annotation,record,method-primary
import java.math.BigDecimal;
import java.util.Map;
import javax.measure.quantity.*;
import org.hammerscale.bending.*;
import org.hammerscale.checking.*;
import org.hammerscale.cutting.*;
import org.hammerscale.drawing.*;
import org.hammerscale.fastening.*;
import org.hammerscale.forging.*;
import org.hammerscale.heat.*;
import org.hammerscale.hinge.*;
import org.hammerscale.holding.*;
import org.hammerscale.latch.*;
import org.hammerscale.piece.*;
import org.hammerscale.punching.*;
import org.hammerscale.scale.*;
import org.hammerscale.spacing.*;
import org.hammerscale.stock.*;
import org.hammerscale.strength.*;
import org.hammerscale.units.*;
import org.hammerscale.working.*;
import static org.hammerscale.units.Graduation.*;
import static org.hammerscale.units.Measures.*;

package org.hammerscale.hinge;

import java.util.List;
import org.hammerscale.working.Caution;

/** What every answer about a load carries with it. */
final class LoadCautions {
  static final List<Caution> ALL =
      List.of(
          Caution.danger(
              "this is no certified design: have hardware overhead, and hardware that the public's"
                  + " safety depends on, checked by a licensed engineer; local codes govern"));

  private LoadCautions() {}
}

using System.Runtime.Versioning;
using Pattress.Papers.Drawings;

namespace Pattress.Web.Browser;

/// <summary>How much room there is for a drawing.</summary>
[SupportedOSPlatform("browser")]
public sealed class Viewport
{
    public event Action? Changed;

    public Sizing Wide { get; private set; } = Sizing.Phone;

    /// <summary>A drawing that stands beside text on a desk.</summary>
    public Sizing Narrow => Wide with { WidthPx = Math.Min(Wide.WidthPx, 30 * Wide.TextPx) };

    public void Watch()
    {
        Page.OnResize(Measure);
        Measure();
    }

    private void Measure()
    {
        double[] room = Page.Room();
        var wide = new Sizing(room[0], room[1]);
        if (wide == Wide) return;
        Wide = wide;
        Changed?.Invoke();
    }
}

using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>A newer version of the app: offered, and taken only when the user says so.</summary>
public sealed class Newer
{
    public event Action? Changed;

    /// <summary>It lies ready on the device.</summary>
    public bool IsHere { get; private set; }

    public Task Watch() => Installed.Install(() =>
    {
        IsHere = true;
        Changed?.Invoke();
    });
}

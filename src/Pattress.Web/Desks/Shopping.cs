using Pattress.Jobs;
using Pattress.Jobs.Buying;
using Pattress.Planning.Programs;

namespace Pattress.Web.Desks;

/// <summary>The cheapest shopping for the job on the desk: asked for, worked out beside the page, stopped, and forgotten when the job changes.</summary>
public sealed class Shopping(Desk desk, IProgramSolver solver) : IDisposable
{
    private CancellationTokenSource? _stop;
    private int _revision = -1;
    private BuyAnswer? _answer;

    /// <summary>Something changed: whoever shows it draws again.</summary>
    public event Action? Changed;

    /// <summary>The shopping, as long as the job is the one it was worked out for.</summary>
    public BuyAnswer? Answer => _revision == desk.Revision ? _answer : null;

    public bool Working => _stop is not null;

    /// <summary>True when the last try failed, e.g. because the solver is not on this device yet.</summary>
    public bool Failed { get; private set; }

    /// <summary>Works it out; a second call while it works does nothing.</summary>
    public async Task Find()
    {
        if (Working) return;
        using var stop = new CancellationTokenSource();
        (_stop, Failed) = (stop, false);
        int revision = desk.Revision;
        Changed?.Invoke();
        try
        {
            _answer = await JobBuyer.Buy(desk.Full, PlanData.Embedded, solver, stop.Token);
            _revision = revision;
        }
        catch (OperationCanceledException)
        {
            // Stopped by the user: the quick list stands.
        }
        catch (Exception e) when (e is System.Runtime.InteropServices.JavaScript.JSException or InvalidOperationException)
        {
            Failed = true;
        }

        _stop = null;
        Changed?.Invoke();
    }

    public void Stop() => _stop?.Cancel();

    public void Dispose() => _stop?.Dispose();
}

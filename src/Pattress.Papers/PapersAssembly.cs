namespace Pattress.Papers; internal static class PapersAssembly;
